package org.tugtest.heat;

import java.util.List;

/**
 * How warm a bundle becomes for good.
 *
 * @param celsius temperature of each conductor, in the order given; where some conductor has no
 *     steady temperature up to {@link FreeAir#HOTTEST_C} either none, or each at that at most
 * @param hottestC the one temperature that is held against the bundle's lowest class; infinite when
 *     there is none
 */
public record BundleHeat(List<Double> celsius, double hottestC) {
  /** No steady temperature. */
  public static final BundleHeat NONE = new BundleHeat(List.of(), Double.POSITIVE_INFINITY);

  public BundleHeat {
    celsius = List.copyOf(celsius);
  }

  /** Whether every conductor has a steady temperature. */
  public boolean steady() {
    return Double.isFinite(hottestC);
  }
}
