"""Arguments and signatures of the subject `drillstring`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature

PARAMETERS: dict[str, Parameter] = {}

SIGNATURES: dict[str, Signature] = {}
