"""One row of a study: a bad one is flagged, whatever is wrong with it, and never raised."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from ropewalk.check.facts import Facts
from ropewalk.check.rule import CannotTell, NotApplicable
from ropewalk.errors import InadmissibleError, RopewalkError, ValidityError
from ropewalk.rig.file import RigFileError
from ropewalk.study.base import Base
from ropewalk.study.designs import Designs, NotPossible
from ropewalk.study.inputs import Input
from ropewalk.study.outputs import Output
from ropewalk.study.status import Status

__all__ = ["Evaluator", "Row", "evaluate"]

Array = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Row:
    """What a row gives: for each output its value, status, and why it is not a plain one."""

    values: Array
    status: npt.NDArray[np.uint8]
    reasons: tuple[str, ...]


class Evaluator:
    """Computes rows one after the other; what does not change from one to the next is kept.

    What a row gives does not depend on the rows before.

    Parameters
    ----------
    base
        The rig file.
    inputs
        What the columns of a row are.
    outputs
        What is computed.
    """

    def __init__(self, base: Base, inputs: Sequence[Input], outputs: Sequence[Output]) -> None:
        self.outputs = tuple(outputs)
        self._designs = Designs(base, inputs)

    def __call__(self, row: Array) -> Row:
        """Compute one row, shape (inputs,)."""
        count = len(self.outputs)
        try:
            facts = Facts(self._designs.rig(row))
        except NotPossible as reason:
            status = np.full(count, Status.NOT_POSSIBLE, dtype=np.uint8)
            return Row(np.full(count, np.nan), status, (str(reason),) * count)
        found = [_one(one, facts) for one in self.outputs]
        return Row(
            np.array([value for value, _, _ in found]),
            np.array([status for _, status, _ in found], dtype=np.uint8),
            tuple(reason for _, _, reason in found),
        )


def _one(output: Output, facts: Facts) -> tuple[float, Status, str]:
    try:
        found = output.of(facts)
    except (NotApplicable, RigFileError) as reason:
        # An error of the file here: a table that the rig does not have.
        return np.nan, Status.NOT_APPLICABLE, str(reason)
    except ValidityError as reason:
        return np.nan, Status.OUTSIDE_RANGE, str(reason)
    except InadmissibleError as reason:
        return np.nan, Status.NOT_POSSIBLE, str(reason)
    except (CannotTell, RopewalkError) as reason:
        return np.nan, Status.NOT_COMPUTED, str(reason)
    except Exception as error:  # a row must not stop the others, whatever an own function does
        return np.nan, Status.NOT_COMPUTED, f"{type(error).__name__}: {error}"
    if found.outside_range:
        return found.value, Status.OUTSIDE_RANGE, found.reason
    if math.isnan(found.value):
        return (
            np.nan,
            Status.NOT_POSSIBLE if found.reason else Status.NOT_COMPUTED,
            (found.reason or f"{output.name} is no number"),
        )
    return found.value, Status.OK, ""


def evaluate(base: Base, inputs: Sequence[Input], row: Array, outputs: Sequence[Output]) -> Row:
    """Compute one row; for many, an `Evaluator` keeps what does not change.

    Examples
    --------
    >>> import numpy as np
    >>> import ropewalk as rw
    >>> from ropewalk.study.base import Base
    >>> from ropewalk.study.inputs import input_of
    >>> from ropewalk.study.outputs import outputs_of
    >>> base = Base.of(rw.rig.example("rig7"))
    >>> lines = input_of(base, "reeving.lines")
    >>> row = evaluate(base, [lines], np.array([12.0]), outputs_of("design_factor"))
    >>> print(f"{row.values[0]:.2f}")
    4.12
    """
    return Evaluator(base, inputs, outputs)(np.asarray(row, dtype=np.float64))
