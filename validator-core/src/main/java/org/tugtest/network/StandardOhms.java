package org.tugtest.network;

import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Defaults;
import org.tugtest.table.Cited;

/**
 * Milliohms of joints: as a part gives them, else from {@code defaults}. A default that is the
 * format's own is common practice.
 */
record StandardOhms(Defaults defaults) {
  Cited crimp(@Nullable Double given) {
    return either(given, defaults.crimpMilliohm(), Defaults.FORMAT.crimpMilliohm());
  }

  Cited splice(@Nullable Double given) {
    return either(given, defaults.spliceMilliohm(), Defaults.FORMAT.spliceMilliohm());
  }

  Cited contact(@Nullable Double given) {
    return either(given, defaults.contactMilliohm(), Defaults.FORMAT.contactMilliohm());
  }

  Cited bolted() {
    return either(null, defaults.boltedMilliohm(), Defaults.FORMAT.boltedMilliohm());
  }

  private static Cited either(@Nullable Double given, double standard, double format) {
    if (given != null) {
      return Cited.given(given);
    }
    return Double.compare(standard, format) == 0
        ? new Cited(standard, "default of the format", Basis.COMMON_PRACTICE)
        : new Cited(standard, "given in defaults", Basis.GIVEN);
  }
}
