package org.tugtest.write;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What one row of a sheet is about: an entry of a section, or an entry inside one. */
@SuppressWarnings("ImmutableEnumChecker") // its lists are unmodifiable copies
enum SheetLevel {
  WIRE(
      "",
      "wires",
      null,
      null,
      "from to part areaMm2 awg colour colourDrawn circuit via laidInPlace cutMm builtMm"
          + " fromTerminal toTerminal label evidence decision reason note"),
  CONNECTOR(
      "",
      "connectors",
      null,
      null,
      "housing mates at parked terminals seals blanked label boot breakoutMm serviceMm note"),
  CAVITY("cavity", "connectors", "cavities", "pinMap", "terminal seal blank evidence pinMap note"),
  DEVICE("device", "devices", null, null, "type at positions maxC grams note"),
  PIN(
      "pin",
      "devices",
      "pins",
      "boltedTo",
      "family side at maxTerminals inside breakoutMm serviceMm boltedTo note"),
  PORT("port", "devices", "ports", null, "housing note"),
  ELEMENT(
      "element",
      "devices",
      "elements",
      null,
      "kind plus minus a b pin type reference coil rest closedIn isolator volts amps ohms watts"
          + " atVolts use inrushA inrushS dutyPercent intermittent critical minV maxV capacitanceUf"
          + " maxDropPercent maxA chargeOhms generator selfLimiting fedBy ratingA style electronic"
          + " milliohm pullInV dropOutV note");

  private final String word;
  private final String section;
  private final @Nullable String inner;
  private final @Nullable String aside;
  private final List<String> fields;

  SheetLevel(
      String word, String section, @Nullable String inner, @Nullable String aside, String fields) {
    this.word = word;
    this.section = section;
    this.inner = inner;
    this.aside = aside;
    this.fields = List.of(fields.split(" "));
  }

  /** The word that tells such rows from others of one sheet; empty where none is needed. */
  String word() {
    return word;
  }

  String section() {
    return section;
  }

  /** The map inside an entry of the section that holds the rows; null for the entry itself. */
  @Nullable String inner() {
    return inner;
  }

  /** A field that stands in a map of its own beside {@link #inner}; null without one. */
  @Nullable String aside() {
    return aside;
  }

  /** The fields of a row, in the order of the format. */
  List<String> fields() {
    return fields;
  }

  /** Where the object of a row stands. */
  List<String> entry(String id, String name) {
    return inner == null ? List.of(section, id) : List.of(section, id, inner, name);
  }

  /** Where a field of a row stands. */
  List<String> path(String id, String name, String field) {
    if (inner == null) {
      return List.of(section, id, field);
    }
    return field.equals(aside)
        ? List.of(section, id, aside, name)
        : List.of(section, id, inner, name, field);
  }
}
