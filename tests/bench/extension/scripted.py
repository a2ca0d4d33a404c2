"""The formula of UC.LINER.MASS as add-in functions in Python: Scripted knows six units by heart and checks no
dimension; Checked leaves units and dimensions to Pint, and has it read each unit's text once only."""
import functools
import re

import pint
import unohelper
from com.sun.star.lang import XServiceInfo
from undercroftbench import XMass

SERVICE = "undercroftbench.Scripted"
FACTORS = {"m2": 1.0, "m": 1.0, "mm": 1e-3, "kg/m3": 1.0, "kg": 1.0, "t": 1e3}


def si(pair):
    number, unit = pair[0]
    return number * FACTORS[unit]


class Scripted(unohelper.Base, XMass, XServiceInfo):
    def __init__(self, context):
        self.context = context

    def mass(self, area, thickness, density, unit):
        a, t, rho = si(area), si(thickness), si(density)
        if a < 0 or t <= 0 or rho <= 0:
            raise ValueError("out of range")
        return a * t * rho / FACTORS[unit]

    def getImplementationName(self):
        return "undercroftbench.ScriptedComponent"

    def supportsService(self, name):
        return name == SERVICE

    def getSupportedServiceNames(self):
        return (SERVICE,)


units = pint.UnitRegistry()
units.preprocessors = [functools.partial(re.sub, r"(?<=[A-Za-z])(?=\d)", "**")]  # "m2" as "m**2"
unit_of = functools.lru_cache(units.Unit)


def quantity(pair):
    number, unit = pair[0]
    return units.Quantity(number, unit_of(unit))


class Checked(unohelper.Base, XMass, XServiceInfo):
    def __init__(self, context):
        self.context = context

    def mass(self, area, thickness, density, unit):
        a = quantity(area).m_as(unit_of("m2"))
        t = quantity(thickness).m_as(unit_of("m"))
        rho = quantity(density).m_as(unit_of("kg/m3"))
        if a < 0 or t <= 0 or rho <= 0:
            raise ValueError("out of range")
        return units.Quantity(a * t * rho, unit_of("kg")).m_as(unit_of(unit))

    def getImplementationName(self):
        return "undercroftbench.CheckedComponent"

    def supportsService(self, name):
        return name == "undercroftbench.Checked"

    def getSupportedServiceNames(self):
        return ("undercroftbench.Checked",)


g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Scripted, "undercroftbench.ScriptedComponent", (SERVICE,))
g_ImplementationHelper.addImplementation(Checked, "undercroftbench.CheckedComponent", ("undercroftbench.Checked",))
