package org.tugtest.facts;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.tugtest.model.Harness;
import org.tugtest.network.Fitting;
import org.tugtest.network.Wiring;
import org.tugtest.read.ReadHarness;
import org.tugtest.text.Places;
import org.tugtest.text.Problem;
import org.tugtest.text.SourceText;

/**
 * One view of all that is read and computed of one harness. Each part is computed when first asked
 * for, once; the view may be used by several threads.
 */
public final class Facts {
  private final ReadHarness read;
  private final LocalDate today;
  private final KnownRules knownRules;
  private final WaiverUse waiverUse;
  private final Lazy<Wiring> wiring;
  private final Lazy<Fitting> fitting;

  private Facts(ReadHarness read, LocalDate today, KnownRules knownRules) {
    this.read = read;
    this.today = today;
    this.knownRules = knownRules;
    this.waiverUse = WaiverUse.NONE;
    this.wiring = new Lazy<>(() -> Wiring.of(read.harness()));
    this.fitting = new Lazy<>(() -> new Fitting(read.harness(), wiring.get()));
  }

  private Facts(Facts same, WaiverUse waiverUse) {
    this.read = same.read;
    this.today = same.today;
    this.knownRules = same.knownRules;
    this.waiverUse = waiverUse;
    this.wiring = same.wiring;
    this.fitting = same.fitting;
  }

  /**
   * The facts of a harness.
   *
   * @param today the day that waivers are held against
   * @param knownRules the rules that {@code limits} and {@code waivers} may name
   */
  public static Facts of(ReadHarness read, LocalDate today, KnownRules knownRules) {
    return new Facts(read, today, knownRules);
  }

  /** The same facts, all that is computed included, with what the waivers did. */
  public Facts with(WaiverUse use) {
    return new Facts(this, use);
  }

  /** What the files say. */
  public Harness harness() {
    return read.harness();
  }

  /** Where they say it. */
  public Places places() {
    return read.places();
  }

  /** What is wrong with the files as written. */
  public List<Problem> problems() {
    return read.problems();
  }

  /** The text of each file that could be decoded, by path. */
  public Map<String, SourceText> texts() {
    return read.texts();
  }

  /** Files of this harness of which nothing could be used; what they define is not known. */
  public List<String> unread() {
    return read.unread();
  }

  /** The day that waivers are held against. */
  public LocalDate today() {
    return today;
  }

  /** The rules that {@code limits} and {@code waivers} may name. */
  public KnownRules knownRules() {
    return knownRules;
  }

  /** What the waivers did; nothing until the last stage of a check. */
  public WaiverUse waiverUse() {
    return waiverUse;
  }

  /** What references name, what ends where, and what mates. */
  public Wiring wiring() {
    return wiring.get();
  }

  /** Which terminal and seal sit in each cavity, and the sizes of the wires. */
  public Fitting fitting() {
    return fitting.get();
  }
}
