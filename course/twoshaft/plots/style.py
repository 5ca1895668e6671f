"""Colours, sizes and strokes: the only place they are written down.

Data colours are the Okabe-Ito set (Okabe and Ito 2008, "Color Universal Design").
"""

INK = "#1b1b1b"
PAPER = "#fcfcfa"
ACCENT = "#0b5c8a"
OKABE_ITO = {
    "orange": "#e69f00",
    "sky": "#56b4e9",
    "green": "#009e73",
    "yellow": "#f0e442",
    "blue": "#0072b2",
    "vermilion": "#d55e00",
    "purple": "#cc79a7",
}
GRID_PX = 8
