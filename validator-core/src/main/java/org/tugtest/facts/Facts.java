package org.tugtest.facts;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tugtest.heat.AlongRoute;
import org.tugtest.heat.Ampacities;
import org.tugtest.heat.FreeAirAmps;
import org.tugtest.heat.LoomHeat;
import org.tugtest.heat.LoomSections;
import org.tugtest.heat.WireForms;
import org.tugtest.model.Harness;
import org.tugtest.network.ClosedTogether;
import org.tugtest.network.Fitting;
import org.tugtest.network.LowSupplies;
import org.tugtest.network.Nets;
import org.tugtest.network.Network;
import org.tugtest.network.Sides;
import org.tugtest.network.WireLengths;
import org.tugtest.network.Wiring;
import org.tugtest.network.WorkingResistances;
import org.tugtest.operate.AmbientTemperature;
import org.tugtest.operate.Operating;
import org.tugtest.protect.Faults;
import org.tugtest.protect.Isolation;
import org.tugtest.protect.Protection;
import org.tugtest.read.ReadHarness;
import org.tugtest.route.Bundles;
import org.tugtest.route.Routes;
import org.tugtest.route.Surroundings;
import org.tugtest.route.Totals;
import org.tugtest.route.TotalsCount;
import org.tugtest.route.Transitions;
import org.tugtest.text.JsonPointer;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Places;
import org.tugtest.text.Problem;
import org.tugtest.text.SourceText;

/**
 * One view of all that is read and computed of one harness. Each part is computed when first asked
 * for, once; the view may be used by several threads.
 */
public final class Facts {
  /**
   * Why something is not judged whose fault would be that a thing is not there: it may stand in a
   * file of which nothing could be used.
   */
  public static final String FILE_UNREAD = "a file of this harness could not be read";

  private static final String FILES = "files/";
  private final ReadHarness read;
  private final LocalDate today;
  private final KnownRules knownRules;
  private final WaiverUse waiverUse;
  private final @Nullable AsBuilt asBuilt;
  private final Computed computed;

  /** What is computed from the files alone, shared by all views of them. */
  private static final class Computed {
    final List<String> unread;
    final Lazy<Misread> misread;
    final Lazy<Wiring> wiring;
    final Lazy<Fitting> fitting;
    final Lazy<Network> network;
    final Lazy<Nets> nets;
    final Lazy<ClosedTogether> together;
    final Lazy<Sides> sides;
    final Lazy<LowSupplies> lowSupplies;
    final Lazy<Routes> routes;
    final Lazy<Bundles> bundles;
    final Lazy<WorkingResistances> resistances;
    final Lazy<Totals> totals;
    final Lazy<Transitions> transitions;
    final Lazy<LoomSections> sections;
    final Lazy<Operating> operating;
    final Lazy<Protection> protection;
    final Lazy<Faults> faults;
    final Lazy<Isolation> isolation;
    final Lazy<Ampacities> ampacity;
    final Map<Class<?>, Lazy<Object>> made = new ConcurrentHashMap<>();

    Computed(ReadHarness read) {
      Harness harness = read.harness();
      unread = unread(read);
      misread = new Lazy<>(() -> Misread.by(read.problems()));
      wiring = new Lazy<>(() -> Wiring.of(harness));
      fitting = new Lazy<>(() -> new Fitting(harness, wiring.get()));
      network = new Lazy<>(() -> Network.of(harness, wiring.get()));
      nets = new Lazy<>(() -> Nets.of(harness, wiring.get(), network.get()));
      together = new Lazy<>(() -> ClosedTogether.of(harness, network.get()));
      sides = new Lazy<>(() -> Sides.of(network.get(), together.get()));
      lowSupplies = new Lazy<>(() -> LowSupplies.of(network.get(), harness.defaults().nominalV()));
      routes =
          new Lazy<>(() -> Routes.of(harness, wiring.get(), fitting.get(), givenDefaults(read)));
      bundles =
          new Lazy<>(
              () ->
                  Bundles.of(
                      harness,
                      fitting.get().sizes(),
                      routes.get(),
                      new Surroundings(harness, givenDefaults(read))));
      resistances =
          new Lazy<>(() -> new WorkingResistances(harness, fitting.get(), routes.get().lengths()));
      totals =
          new Lazy<>(
              () ->
                  TotalsCount.of(
                      harness, wiring.get(), fitting.get(), routes.get(), bundles.get()));
      sections =
          new Lazy<>(
              () ->
                  LoomSections.of(
                      harness, new WireForms(harness), wiring.get(), routes.get(), bundles.get()));
      transitions = new Lazy<>(() -> Transitions.of(harness, bundles.get()));
      operating =
          new Lazy<>(
              () ->
                  Operating.of(
                      harness,
                      network.get(),
                      resistances.get(),
                      new AmbientTemperature(harness, wiring.get(), network.get()),
                      new LoomHeat(sections.get(), new FreeAirAmps())));
      protection = new Lazy<>(() -> Protection.of(harness, network.get(), together.get()));
      faults =
          new Lazy<>(() -> Faults.of(harness, network.get(), protection.get(), resistances.get()));
      isolation = new Lazy<>(() -> protection.get().isolation(harness));
      ampacity =
          new Lazy<>(
              () ->
                  new Ampacities(
                      new WireForms(harness),
                      new AlongRoute(harness, wiring.get(), routes.get(), bundles.get()),
                      operating.get().beside(sections.get(), protection.get()::lasts)));
    }

    /** The fields that {@code defaults} of the root writes. */
    private static Set<String> givenDefaults(ReadHarness read) {
      Set<String> given = new TreeSet<>();
      for (String field : Routes.DEFAULTS) {
        String pointer = read.places().of("defaults", field).pointer();
        if (pointer.equals(JsonPointer.of("defaults", field))) {
          given.add(field);
        }
      }
      return given;
    }

    /** Files that could not be used, those that are used but not there included. */
    private static List<String> unread(ReadHarness read) {
      Set<String> files = new TreeSet<>(NaturalOrder.NATURAL);
      files.addAll(read.unread());
      for (Problem problem : read.problems()) {
        if (problem.kind() == Problem.Kind.FILE_UNREADABLE && problem.subject().startsWith(FILES)) {
          files.add(problem.subject().substring(FILES.length()));
        }
      }
      return List.copyOf(files);
    }
  }

  private Facts(ReadHarness read, LocalDate today, KnownRules knownRules) {
    this.read = read;
    this.today = today;
    this.knownRules = knownRules;
    this.waiverUse = WaiverUse.NONE;
    this.asBuilt = null;
    this.computed = new Computed(read);
  }

  private Facts(Facts same, WaiverUse waiverUse, @Nullable AsBuilt asBuilt) {
    this.read = same.read;
    this.today = same.today;
    this.knownRules = same.knownRules;
    this.waiverUse = waiverUse;
    this.asBuilt = asBuilt;
    this.computed = same.computed;
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

  /**
   * What a package above makes of the files alone, made when first asked for, once.
   *
   * @param what names it
   * @param made how it is made; asked the first time only, with facts that know nothing of waivers
   *     and of what was built
   */
  public <T> T once(Class<T> what, Function<Facts, T> made) {
    Facts files = new Facts(this, WaiverUse.NONE, null);
    return what.cast(
        computed.made.computeIfAbsent(what, none -> new Lazy<>(() -> made.apply(files))).get());
  }

  /** The same facts, all that is computed included, with what the waivers did. */
  public Facts with(WaiverUse use) {
    return new Facts(this, use, asBuilt);
  }

  /** The same facts, all that is computed included, with what was built and measured. */
  public Facts with(AsBuilt built) {
    return new Facts(this, waiverUse, built);
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
    return computed.unread;
  }

  /** Things that the files name but do not say rightly. */
  public Misread misread() {
    return computed.misread.get();
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

  /** What was built and measured; empty when nothing of it is told. */
  public Optional<AsBuilt> asBuilt() {
    return Optional.ofNullable(asBuilt);
  }

  /** What references name, what ends where, and what mates. */
  public Wiring wiring() {
    return computed.wiring.get();
  }

  /** Which terminal and seal sit in each cavity, and the sizes of the wires. */
  public Fitting fitting() {
    return computed.fitting.get();
  }

  /** All points and what lies between them. */
  public Network network() {
    return computed.network.get();
  }

  /** Which points are one. */
  public Nets nets() {
    return computed.nets.get();
  }

  /** Which contacts can be closed at the same time. */
  public ClosedTogether together() {
    return computed.together.get();
  }

  /** Feed side and return side. */
  public Sides sides() {
    return computed.sides.get();
  }

  /** What is fed by sources of far less than nominal volts alone. */
  public LowSupplies lowSupplies() {
    return computed.lowSupplies.get();
  }

  /** What fuses keep wires and loads from. */
  public Protection protection() {
    return computed.protection.get();
  }

  /** What shorts draw and how they end. */
  public Faults faults() {
    return computed.faults.get();
  }

  /** What stays live when every isolator contact is open. */
  public Isolation isolation() {
    return computed.isolation.get();
  }

  /** The lasting currents that the wires stand, and how warm they get. */
  public Ampacities ampacity() {
    return computed.ampacity.get();
  }

  /** How the wires run along the layout. */
  public Routes routes() {
    return computed.routes.get();
  }

  /** What lies side by side along the layout, and what is round it. */
  public Bundles bundles() {
    return computed.bundles.get();
  }

  /** Metres and grams of all that the looms are made of. */
  public Totals totals() {
    return computed.totals.get();
  }

  /** Where coverings meet at a node, the steps in diameter and what goes over them. */
  public Transitions transitions() {
    return computed.transitions.get();
  }

  /** How long the wires are: as built, else as cut, else as routed. */
  public WireLengths lengths() {
    return routes().lengths();
  }

  /** All sections through the looms, and by which of them each wire runs. */
  public LoomSections sections() {
    return computed.sections.get();
  }

  /** Volts, currents, temperatures and relay positions in every state. */
  public Operating operating() {
    return computed.operating.get();
  }
}
