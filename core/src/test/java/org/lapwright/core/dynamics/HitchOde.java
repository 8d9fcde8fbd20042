package org.lapwright.core.dynamics;

import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** The trailing axle by Hipparchus' integrator: dψ/ds = κ − sin ψ / L. */
final class HitchOde {
    private static final DormandPrince853Integrator INTEGRATOR = new DormandPrince853Integrator(1e-9, 1, 1e-13, 1e-13);

    private HitchOde() {}

    /** The hitch angle after a way of constant curvature, rad. */
    static double after(double angle, double wayM, double curvature, double lengthM) {
        OrdinaryDifferentialEquation tail = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public double[] computeDerivatives(double s, double[] y) {
                return new double[] {curvature - Math.sin(y[0]) / lengthM};
            }
        };
        return INTEGRATOR.integrate(tail, new ODEState(0, new double[] {angle}), wayM)
                .getPrimaryState()[0];
    }
}
