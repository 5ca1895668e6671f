"""Sign-in words: two plain words that are easy to say, copy and type."""

from __future__ import annotations

import secrets

# Short, distinct when spoken, unlike each other on paper; none is a part of a transaxle.
_WORDS = (  # noqa: SIM905 - quoted one by one they would be hard to read
    "amber anchor apple arrow autumn bacon badge bamboo banjo barley basket beacon beaver berry "
    "birch bishop blanket blossom bottle branch bread bridge bronze brook bucket butter button "
    "cabin camel candle canoe canyon carpet carrot castle cedar cellar chalk cherry chimney "
    "cider cinema clover cobalt coffee comet copper coral cotton cradle crayon cricket crystal "
    "dahlia daisy dancer desert dinner dolphin donkey dragon drummer eagle easel echo ember "
    "engine envoy falcon feather fern ferry fiddle finch flame flute forest fossil fountain "
    "garden garlic ginger glacier goblet gondola granite grape gravel guitar hammock harbour "
    "harvest hazel heather helmet heron hockey honey island ivory jacket jasmine jelly jigsaw "
    "jungle kayak kennel kettle kitten ladder lagoon lantern lemon lentil lilac linen lizard "
    "lobster magpie mango maple marble meadow melon mirror mitten monsoon mountain mustard "
    "napkin nectar nutmeg oasis ocean olive onion orchard otter oyster paddle pancake "
    "panda parade parcel parrot pebble pelican pencil pepper piano pigeon pillow planet pocket "
    "pony poppy potato prairie puffin pumpkin puzzle quartz quilt rabbit radish rainbow raven "
    "ribbon river robin rocket saffron salmon sandal scarf seagull shadow silver sparrow "
    "spinach spruce squirrel stable statue summit sunset swallow teapot temple thimble thistle "
    "ticket tiger timber tomato trumpet tulip tunnel turnip turtle valley vanilla velvet violin "
    "waffle walnut walrus wardrobe willow window winter yellow zebra"
).split()


def new_word() -> str:
    """Draw a sign-in word at random, such as ``copper-heron``."""
    return f"{secrets.choice(_WORDS)}-{secrets.choice(_WORDS)}"
