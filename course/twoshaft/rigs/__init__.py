"""Interactive simulators, one for each model."""

from twoshaft.rigs.bench import OrderBench, order_bench
from twoshaft.rigs.build import BuildSimulator, build_simulator
from twoshaft.rigs.closeout import (
    BreatherRig,
    LeakRig,
    OilChart,
    RoadRig,
    breather_rig,
    leak_rig,
    oil_chart_rig,
    road_rig,
)
from twoshaft.rigs.college import college_photographs, college_sources
from twoshaft.rigs.cord import CordBench, cord_bench
from twoshaft.rigs.depth import DepthGauge, depth_gauge
from twoshaft.rigs.exploded import ExplodedView, exploded_view
from twoshaft.rigs.face import FaceTightening, face_tightening
from twoshaft.rigs.fault_board import FaultBoard, fault_board_rig
from twoshaft.rigs.gate import GateRig, gate_rig
from twoshaft.rigs.gears import GearRig, closed_gears, gear_rig
from twoshaft.rigs.hazards import HazardPicture, hazard_picture
from twoshaft.rigs.inspect import GuardRig, Lamp, guard_rig, lamp
from twoshaft.rigs.lifting import LiftingRig, lifting_rig
from twoshaft.rigs.micrometer import Micrometer, micrometer
from twoshaft.rigs.own_checks import OwnChecks, own_checks
from twoshaft.rigs.press import PressRig, press_rig
from twoshaft.rigs.rules import RulePicture, rule_picture
from twoshaft.rigs.runout import RunOut, run_out_rig
from twoshaft.rigs.sealant import SealantRig, sealant_rig
from twoshaft.rigs.seat import SealSeat, seal_seat
from twoshaft.rigs.shims import ShimBench, shim_bench
from twoshaft.rigs.strip import StripSimulator, strip_simulator
from twoshaft.rigs.thread import ThreadChooser, thread_chooser
from twoshaft.rigs.unit_section import UnitSection, unit_section
from twoshaft.rigs.whole_build import WholeBuild, whole_build
from twoshaft.rigs.wrench import WrenchBench, wrench_bench
from twoshaft.rigs.written import reading_table

__all__ = [
    "BreatherRig",
    "BuildSimulator",
    "CordBench",
    "DepthGauge",
    "ExplodedView",
    "FaceTightening",
    "FaultBoard",
    "GateRig",
    "GearRig",
    "GuardRig",
    "HazardPicture",
    "Lamp",
    "LeakRig",
    "LiftingRig",
    "Micrometer",
    "OilChart",
    "OrderBench",
    "OwnChecks",
    "PressRig",
    "RoadRig",
    "RulePicture",
    "RunOut",
    "SealSeat",
    "SealantRig",
    "ShimBench",
    "StripSimulator",
    "ThreadChooser",
    "UnitSection",
    "WholeBuild",
    "WrenchBench",
    "breather_rig",
    "build_simulator",
    "closed_gears",
    "college_photographs",
    "college_sources",
    "cord_bench",
    "depth_gauge",
    "exploded_view",
    "face_tightening",
    "fault_board_rig",
    "gate_rig",
    "gear_rig",
    "guard_rig",
    "hazard_picture",
    "lamp",
    "leak_rig",
    "lifting_rig",
    "micrometer",
    "oil_chart_rig",
    "order_bench",
    "own_checks",
    "press_rig",
    "reading_table",
    "road_rig",
    "rule_picture",
    "run_out_rig",
    "seal_seat",
    "sealant_rig",
    "shim_bench",
    "strip_simulator",
    "thread_chooser",
    "unit_section",
    "whole_build",
    "wrench_bench",
]
