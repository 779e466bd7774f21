"""Text from files that somebody else wrote, made fit to be shown on one line."""

from __future__ import annotations

import re

__all__ = ["CONTROL", "plain"]

#: Control characters, and those that turn the direction of writing around.
CONTROL = re.compile("[\x00-\x1f\x7f-\x9f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufffe\uffff]")
_SURROGATE = re.compile("[\ud800-\udfff]")


def plain(given: object) -> str:
    r"""Text on one line, without control characters.

    >>> plain("casing\n\x1b[31m 2200 m")
    'casing [31m 2200 m'
    """
    return _SURROGATE.sub("\ufffd", " ".join(CONTROL.sub(" ", str(given)).split()))
