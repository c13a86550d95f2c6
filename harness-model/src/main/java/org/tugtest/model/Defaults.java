package org.tugtest.model;

/**
 * What holds where a file says nothing. Values outside a sane range are refused by the schema.
 *
 * @param nominalV nominal supply, volts
 * @param ambientC air around the loom where no zone says otherwise, degrees Celsius
 * @param contactMilliohm a mated pair of contacts
 * @param crimpMilliohm one crimped end
 * @param spliceMilliohm one splice
 * @param boltedMilliohm metal bolted to metal
 * @param breakoutMm from the node to the connector or stud
 * @param serviceMm spare wire per end
 * @param stripMm stripped length per end
 * @param cutStepMm cut lengths are rounded up to this step
 */
public record Defaults(
    double nominalV,
    double ambientC,
    double contactMilliohm,
    double crimpMilliohm,
    double spliceMilliohm,
    double boltedMilliohm,
    double breakoutMm,
    double serviceMm,
    double stripMm,
    double cutStepMm) {

  /** The format's own defaults. */
  public static final Defaults FORMAT = new Defaults(12, 40, 5, 0.5, 1, 0.1, 60, 30, 6, 5);
}
