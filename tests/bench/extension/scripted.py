"""The formula of UC.LINER.MASS as an add-in function in Python."""
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


g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Scripted, "undercroftbench.ScriptedComponent", (SERVICE,))
