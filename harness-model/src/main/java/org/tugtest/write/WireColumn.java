package org.tugtest.write;

/** What a column of a wire list holds. */
enum WireColumn {
  FROM("from"),
  FROM_PIN("fromPin"),
  TO("to"),
  TO_PIN("toPin"),
  /** A pin column that does not say of which end. */
  PIN("pin"),
  ID("id"),
  PART("part"),
  SIZE("size"),
  AREA("areaMm2"),
  AWG("awg"),
  COLOUR("colour"),
  STRIPE("stripe"),
  CIRCUIT("circuit"),
  LENGTH("length"),
  LENGTH_MM("lengthMm"),
  LENGTH_CM("lengthCm"),
  LENGTH_M("lengthM"),
  LABEL("label"),
  LOOM("loom"),
  NOTE("note");

  private final String word;

  WireColumn(String word) {
    this.word = word;
  }

  /** The name it has in a map of columns. */
  String word() {
    return word;
  }

  boolean isLength() {
    return this == LENGTH || this == LENGTH_MM || this == LENGTH_CM || this == LENGTH_M;
  }

  boolean isSize() {
    return this == SIZE || this == AREA || this == AWG;
  }
}
