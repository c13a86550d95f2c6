package org.tugtest.heat;

/**
 * Coverings over a bundle of a known size, held against a shrunk one: the gap is taken in the same
 * proportion, as idle wires fill it too. They get no credit: where their surface would carry off
 * more than the bundle bare, they count as not there; no published figure says that one cools.
 *
 * @param inside the coverings, the inside first
 * @param bundleMm expected diameter of the whole bundle, above 0
 */
record NoCooler(Conduit inside, double bundleMm) implements Envelope {
  @Override
  public double wattsPerM(double shrunkMm, double surfaceC, double airC) {
    double share = Math.min(1, shrunkMm / bundleMm);
    return Math.min(
        inside.scaled(share).wattsPerM(shrunkMm, surfaceC, airC),
        Envelope.BARE.wattsPerM(shrunkMm, surfaceC, airC));
  }

  @Override
  public double over(double shrunkMm, double surfaceC, double airC, double watts) {
    double bare = Envelope.BARE.over(shrunkMm, surfaceC, airC, watts);
    double share = Math.min(1, shrunkMm / bundleMm);
    return bare < 0
        ? bare
        : Math.min(bare, inside.scaled(share).over(shrunkMm, surfaceC, airC, watts));
  }
}
