"""A picture as somebody brings it, made small and free of what a camera writes beside it."""

from __future__ import annotations

import io
from dataclasses import dataclass
from pathlib import Path

from PIL import Image, ImageOps, UnidentifiedImageError

from twoshaft.errors import CohortError

LARGEST = 40_000_000
"""Bytes of a picture that is brought: our choice."""
MOST_PIXELS = 64_000_000
LONGEST_PX = 1280
_FORMATS = ("JPEG", "PNG", "WEBP")
_QUALITY = 80
_SAVE_AGAIN = "open it in any viewer and save it as a JPEG of at most 64 megapixels"


@dataclass(frozen=True)
class Reduced:
    """A JPEG without place, date or camera, the right way up, and its size [px]."""

    data: bytes
    width: int
    height: int


def reduced(path: Path) -> Reduced:
    """Read a picture and make it at most 1280 pixels long.

    Raises
    ------
    CohortError
        With one sentence, when it is missing, no picture, damaged or huge.
    """
    try:
        size = path.stat().st_size
        if size > LARGEST:
            raise _refused(path, f"it holds {size / 1e6:.0f} MB, and 40 MB is the most")
        # Only the head is read until the size is known.
        with Image.open(path, formats=_FORMATS) as picture:
            pixels = picture.width * picture.height
            if pixels > MOST_PIXELS:
                raise _refused(path, f"it has {pixels / 1e6:.0f} megapixels, and 64 are the most")
            picture.draft("RGB", (LONGEST_PX, LONGEST_PX))
            turned = ImageOps.exif_transpose(picture)
            turned.thumbnail((LONGEST_PX, LONGEST_PX))
            return _written(_on_white(turned))
    except (FileNotFoundError, IsADirectoryError):
        raise CohortError(
            "there is no such picture", where=str(path), mend="check its name"
        ) from None
    except Image.DecompressionBombError:
        raise _refused(path, "it is far too large") from None
    except UnidentifiedImageError:
        raise _refused(path, "it is no JPEG, PNG or WebP picture") from None
    except (OSError, SyntaxError, ValueError, EOFError, ZeroDivisionError, IndexError):
        raise _refused(path, "it is damaged") from None


def _refused(path: Path, what: str) -> CohortError:
    return CohortError(f"this picture cannot be taken: {what}", where=str(path), mend=_SAVE_AGAIN)


def _on_white(picture: Image.Image) -> Image.Image:
    if "A" not in picture.getbands() and "transparency" not in picture.info:
        return picture.convert("RGB")
    clear = picture.convert("RGBA")
    white = Image.new("RGB", clear.size, "white")
    white.paste(clear, mask=clear.getchannel("A"))
    return white


def _written(picture: Image.Image) -> Reduced:
    bare = Image.new("RGB", picture.size)  # nothing of what came along with the picture
    bare.paste(picture)
    out = io.BytesIO()
    bare.save(out, "JPEG", quality=_QUALITY, optimize=True, progressive=True)
    return Reduced(out.getvalue(), *bare.size)
