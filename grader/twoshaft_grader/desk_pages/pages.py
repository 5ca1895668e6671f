"""The desk's pages, in the order of a week."""

from __future__ import annotations

from twoshaft_grader.desk_pages.adjustments import Adjustments
from twoshaft_grader.desk_pages.change import ChangeAndAppeal
from twoshaft_grader.desk_pages.cohorts import Cohorts
from twoshaft_grader.desk_pages.corrected_unit import CorrectedUnit
from twoshaft_grader.desk_pages.group import Group
from twoshaft_grader.desk_pages.hand_out import HandOut
from twoshaft_grader.desk_pages.hand_over import HandOver
from twoshaft_grader.desk_pages.how_it_goes import HowItGoesPage
from twoshaft_grader.desk_pages.matrix import MatrixPage
from twoshaft_grader.desk_pages.moderation import ModerationPage
from twoshaft_grader.desk_pages.observe import Observe
from twoshaft_grader.desk_pages.own_unit import OwnUnit
from twoshaft_grader.desk_pages.page import Page
from twoshaft_grader.desk_pages.photographs import PhotographsPage
from twoshaft_grader.desk_pages.remark import Remark
from twoshaft_grader.desk_pages.rules import RulesPage
from twoshaft_grader.desk_pages.supervised import Supervised
from twoshaft_grader.desk_pages.take_in import TakeIn
from twoshaft_grader.desk_pages.trail import Trail

PAGES: tuple[type[Page], ...] = (
    OwnUnit,
    Cohorts,
    Group,
    Adjustments,
    HandOut,
    Supervised,
    TakeIn,
    HowItGoesPage,
    MatrixPage,
    Observe,
    ChangeAndAppeal,
    Remark,
    ModerationPage,
    CorrectedUnit,
    PhotographsPage,
    RulesPage,
    HandOver,
    Trail,
)
OPENS = Group
