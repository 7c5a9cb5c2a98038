/**
 * Physics and statistics of the bench, in SI doubles. The list of required modules is short on purpose:
 * the compiler refuses databases, web servers and files here.
 */
module hornwright.engines {
    requires hipparchus.core;
    requires hipparchus.fft;
    requires static org.jspecify;

    exports hornwright.engines.action;
    exports hornwright.engines.air;
    exports hornwright.engines.belief;
    exports hornwright.engines.leak;
    exports hornwright.engines.linkage;
    exports hornwright.engines.numerics;
    exports hornwright.engines.pitch;
    exports hornwright.engines.quantity;
    exports hornwright.engines.seat;
    exports hornwright.engines.spring;
    exports hornwright.engines.uncertainty;
}
