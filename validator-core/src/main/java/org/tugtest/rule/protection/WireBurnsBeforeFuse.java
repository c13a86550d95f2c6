package org.tugtest.rule.protection;

import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;

/** Somewhere among the currents of a short the wire is at its limit before its fuse has opened. */
public final class WireBurnsBeforeFuse implements Rule {
  static final String KELVIN = "kelvin";

  private static final RuleInfo INFO =
      RuleInfo.of("wire-burns-before-fuse", Heading.PROTECTION, Level.ERROR)
          .summary("at some current of a short a wire is too hot before its fuse has opened")
          .subjects("wires behind a fuse, on feed and return side")
          .looksFor(
              """
              A wire that some current of a short brings to its limit before the fuses before it
              must have opened. Looked at is every current from the least that is sure to open them
              to the greatest that a short at the near end draws; for a wire of the return side, that
              a short in a load behind it draws. The wire starts at its class temperature and warms
              up by one transient with its cooling in the worst piece of its way; the fuse takes its
              greatest time. Over its class by so many kelvin it is a warning; it is an error where
              it would also come over 250 °C (350 °C for classes over 200 °C) first, and the fuse's
              times are the part's own or read. A time past the last point of the fuse's curve is
              extrapolated and warns only. A wire of unknown size, one whose fuses have no known
              times (or a smaller one of them has none, as a trip), and one that no short is sure to clear, are not judged.
              """)
          .why(
              """
              A fuse that opens in the end does not help a wire that has burnt before. Between one
              and a half and three times the rating fuses are slow, and that is what a chafed wire
              or a stalled motor draws.
              """)
          .remedy("Take the next larger wire, or a smaller or faster fuse if the loads allow it.")
          .basis(
              """
              Transient: Qc and the adiabatic formula of IEC 60364-5-54 Annex A with the heat balance
              of the wire. 50 K over the class: the overload test of ISO 6722 over 6 h, from memory.
              250 °C and 350 °C: final temperatures of cross-linked and of silicone insulation in the
              same annex. Opening times as in fuse-does-not-clear.
              """)
          .causes(Cause.WIRE_BURNS, Cause.FUSE_TOO_GREAT)
          .follows(
              Cause.ON_WAY_OF_SHORT,
              Cause.WIRE_UNDER_LOAD,
              Cause.WIRE_UNDER_FUSE,
              Cause.WIRE_BURNS,
              Cause.FUSE_TOO_GREAT)
          .setting(
              new Setting(
                  KELVIN, 50, 1, 200, "K", "over the class of the wire; ISO 6722, from memory"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                               "volts": 12.6, "ohms": 0.01}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 20,
                                            "style": "blade-mini"}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 6, "cutMm": 300},
                         "W2": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 0.35, "cutMm": 1000},
                         "W3": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 4, "cutMm": 1000}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                               "volts": 12.6, "ohms": 0.01}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 5,
                                            "style": "blade-mini"}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 6, "cutMm": 300},
                         "W2": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 1, "cutMm": 1000},
                         "W3": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 1000}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    new Burning(facts, settings, ledger).judge();
  }
}
