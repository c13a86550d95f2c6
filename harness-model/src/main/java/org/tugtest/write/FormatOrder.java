package org.tugtest.write;

import static org.tugtest.write.Shape.byContent;
import static org.tugtest.write.Shape.line;
import static org.tugtest.write.Shape.list;
import static org.tugtest.write.Shape.map;
import static org.tugtest.write.Shape.open;

/**
 * The order and the layout of everything in a harness file, a record and a file of announced
 * changes: one table, in the order of the format's own. What it does not name is never lost; it
 * comes after what it names, in natural order, and before {@code note}.
 */
final class FormatOrder {
  private FormatOrder() {}

  private static final Shape WIRE =
      line(
          "from to part areaMm2 awg colour colourDrawn circuit via laidInPlace cutMm builtMm"
              + " fromTerminal toTerminal label evidence decision reason note");

  private static final Shape ELEMENT =
      line(
          "kind plus minus a b pin type reference coil rest closedIn isolator volts amps ohms"
              + " watts atVolts use inrushA inrushS dutyPercent intermittent critical minV maxV"
              + " capacitanceUf maxDropPercent maxA chargeOhms generator selfLimiting fedBy"
              + " ratingA style electronic milliohm pullInV dropOutV note");

  private static final Shape DEVICE =
      byContent("type at boltedTo pins ports positions elements maxC grams note")
          .with("boltedTo", map())
          .with("pins", map(line("family side at maxTerminals inside breakoutMm serviceMm note")))
          .with("ports", map(line("housing pins note").with("pins", map())))
          .with("elements", map(ELEMENT));

  private static final Shape CONNECTOR =
      byContent(
              "housing mates at parked terminals seals blanked cavities label boot breakoutMm"
                  + " serviceMm pinMap note")
          .with("cavities", map(line("terminal seal blank evidence note")))
          .with("pinMap", map());

  private static final Shape WIRE_PART =
      byContent(
          "areaMm2 awg maxC wall milliohmPerM outerMm conductorMm gramsPerM minBendMm maxA stocked"
              + " note");

  private static final Shape HOUSING =
      byContent(
              "side rows family cavities sealed keying matesWith terminals seals secondaryLock"
                  + " maxC grams note")
          .with("cavities", map(line("family note")));

  private static final Shape TERMINAL =
      byContent(
              "family side areaMinMm2 areaMaxMm2 insulationMinMm insulationMaxMm maxWires maxA"
                  + " contactMilliohm crimpMilliohm stripMm crimps grams note")
          .with(
              "crimps",
              list(
                  line(
                      "areaMinMm2 areaMaxMm2 heightMm toleranceMm widthMm insulationHeightMm pullN"
                          + " note")));

  private static final Shape FUSE =
      byContent("ratingA style maxV breakingCapacityA coldMilliohm times note")
          .with("times", list(line("multiple leastS greatestS note")));

  private static final Shape PARTS =
      open("wires housings terminals seals splices fuses coverings supports deviceTypes note")
          .with("wires", map(WIRE_PART))
          .with("housings", map(HOUSING))
          .with("terminals", map(TERMINAL))
          .with("seals", map(byContent("family insulationMinMm insulationMaxMm grams note")))
          .with(
              "splices",
              map(byContent("areaMinMm2 areaMaxMm2 maxWires milliohm maxC sealed grams note")))
          .with("fuses", map(FUSE))
          .with(
              "coverings",
              map(
                  byContent(
                      "kind innerMm innerMinMm innerMaxMm wallMm maxC gramsPerM protects note")))
          .with("supports", map(byContent("kind grams note")))
          .with("deviceTypes", map(DEVICE));

  private static final Shape LAYOUT =
      open("nodes segments note")
          .with("nodes", map(line("zone held xyzMm coverings note")))
          .with(
              "segments",
              map(
                  line("from to lengthMm zone coverings supports supportPart bendRadiusMm"
                          + " flexes clearanceMm note")
                      .with("clearanceMm", line("hot moving controls fuel edge note"))));

  private static final Shape STATE =
      line("set on running volts from brief note").with("set", map()).with("volts", map());

  private static final Shape LIMIT =
      byContent("level * places note").with("places", map(line("level * note")));

  /** A whole file of any kind that tidy writes. */
  static final Shape FILE =
      open("$schema format title revision sketch description record uses loom defaults parts"
              + " devices fitted connectors splices wires groups zones states layout limits"
              + " waivers expectations entries changes note")
          .with("record", open("plan loom revision vehicle by date note"))
          .with("uses", list(line("")))
          .with("loom", open("id title revision evidence stage note"))
          .with(
              "defaults",
              open(
                  "nominalV ambientC contactMilliohm crimpMilliohm spliceMilliohm boltedMilliohm"
                      + " breakoutMm serviceMm stripMm cutStepMm note"))
          .with("parts", PARTS)
          .with("devices", map(DEVICE))
          .with("fitted", map())
          .with("connectors", map(CONNECTOR))
          .with("splices", map(line("at on offsetMm part kind coverings label note")))
          .with("wires", map(WIRE))
          .with("groups", map(line("kind wires screen pitchMm outerMm gramsPerM minBendMm note")))
          .with("zones", map(byContent("ambientC moisture needs near note")))
          .with("states", map(STATE))
          .with("layout", LAYOUT)
          .with("limits", map(LIMIT))
          .with("waivers", map(line("rule at reason until state note")))
          .with(
              "expectations",
              map(byContent("that at points fuse wires circuits loom in minV grams reason note")))
          .with(
              "entries",
              map(
                  line("kind at planned built builtMm reason by date cause safe state accepted"
                          + " until note")
                      .with("planned", WIRE)
                      .with("built", WIRE)))
          .with("changes", map(line("nets reason by note")));
}
