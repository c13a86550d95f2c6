package org.tugtest.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import org.tugtest.facts.KnownRules;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.body.BendTooTight;
import org.tugtest.rule.body.CircuitDoublesBack;
import org.tugtest.rule.body.ClearanceSmall;
import org.tugtest.rule.body.CoveringLoose;
import org.tugtest.rule.body.CoveringMissing;
import org.tugtest.rule.body.CoveringOverfilled;
import org.tugtest.rule.body.FeedsNearSignals;
import org.tugtest.rule.body.LoomOverweight;
import org.tugtest.rule.body.MaterialTooCool;
import org.tugtest.rule.body.RouteBroken;
import org.tugtest.rule.body.SegmentTooShort;
import org.tugtest.rule.body.SpliceMisplaced;
import org.tugtest.rule.body.SupportSpanLong;
import org.tugtest.rule.body.WireTooLong;
import org.tugtest.rule.body.WireTooShort;
import org.tugtest.rule.built.BuiltLengthOff;
import org.tugtest.rule.built.BuiltOtherColour;
import org.tugtest.rule.built.BuiltOtherPart;
import org.tugtest.rule.built.BuiltOtherwise;
import org.tugtest.rule.built.BuiltThinner;
import org.tugtest.rule.built.ReadingHigh;
import org.tugtest.rule.built.ReadingJoined;
import org.tugtest.rule.built.ReadingOpen;
import org.tugtest.rule.connectors.CavityUnsealed;
import org.tugtest.rule.connectors.CircuitCrossesOver;
import org.tugtest.rule.connectors.ColourAmbiguous;
import org.tugtest.rule.connectors.ConnectorCouldMerge;
import org.tugtest.rule.connectors.ConnectorUnmated;
import org.tugtest.rule.connectors.ContactOneSided;
import org.tugtest.rule.connectors.CrossMatingPossible;
import org.tugtest.rule.connectors.FaceMirrored;
import org.tugtest.rule.connectors.HalvesDoNotFit;
import org.tugtest.rule.connectors.LabelMissing;
import org.tugtest.rule.connectors.LabelRepeated;
import org.tugtest.rule.connectors.LivePinsExposed;
import org.tugtest.rule.connectors.SealUnfitForWire;
import org.tugtest.rule.connectors.SpareCavitiesFew;
import org.tugtest.rule.connectors.SpliceOverfilled;
import org.tugtest.rule.connectors.SpliceUnderfilled;
import org.tugtest.rule.connectors.StudOverstacked;
import org.tugtest.rule.connectors.TerminalOverloaded;
import org.tugtest.rule.connectors.TerminalUnfitForCavity;
import org.tugtest.rule.connectors.TerminalUnfitForWire;
import org.tugtest.rule.load.BusMisterminated;
import org.tugtest.rule.load.CoilUnsuppressed;
import org.tugtest.rule.load.ContactSetTwice;
import org.tugtest.rule.load.ContactWeldsOnInrush;
import org.tugtest.rule.load.EarthSingle;
import org.tugtest.rule.load.FigureMissing;
import org.tugtest.rule.load.FuseNearRating;
import org.tugtest.rule.load.FuseNuisanceInrush;
import org.tugtest.rule.load.GaugeUnderLoad;
import org.tugtest.rule.load.LoadBackfed;
import org.tugtest.rule.load.LoadUnfed;
import org.tugtest.rule.load.LoadWithoutReturn;
import org.tugtest.rule.load.PairSplit;
import org.tugtest.rule.load.ParallelSharesUnevenly;
import org.tugtest.rule.load.ReferenceShifted;
import org.tugtest.rule.load.RelayChatters;
import org.tugtest.rule.load.RelayHoldsItself;
import org.tugtest.rule.load.ScreenMisearthed;
import org.tugtest.rule.load.SensorEarthShared;
import org.tugtest.rule.load.SourceOverloaded;
import org.tugtest.rule.load.SourcesSideBySide;
import org.tugtest.rule.load.SupplyCollapses;
import org.tugtest.rule.load.SwitchOverloaded;
import org.tugtest.rule.load.VoltageDropExcessive;
import org.tugtest.rule.load.VoltsOverMost;
import org.tugtest.rule.load.VoltsUnderLeast;
import org.tugtest.rule.load.WireOverheats;
import org.tugtest.rule.protection.DiodeAcrossSupply;
import org.tugtest.rule.protection.FuseBreakingCapacityLow;
import org.tugtest.rule.protection.FuseDoesNotClear;
import org.tugtest.rule.protection.FuseFarFromSource;
import org.tugtest.rule.protection.FuseInReturn;
import org.tugtest.rule.protection.FuseMissingUpstream;
import org.tugtest.rule.protection.FuseNotSelective;
import org.tugtest.rule.protection.FuseVoltageLow;
import org.tugtest.rule.protection.GaugeUnderFuse;
import org.tugtest.rule.protection.IsolatorBypassed;
import org.tugtest.rule.protection.IsolatorInReturn;
import org.tugtest.rule.protection.IsolatorLeavesLoadDump;
import org.tugtest.rule.protection.ReturnUnderFuse;
import org.tugtest.rule.protection.SupplyShorted;
import org.tugtest.rule.protection.TripMayFailClosed;
import org.tugtest.rule.protection.WireBurnsBeforeFuse;
import org.tugtest.rule.written.AreaReadsAsGauge;
import org.tugtest.rule.written.CavityDoubled;
import org.tugtest.rule.written.CavityUnknown;
import org.tugtest.rule.written.DecisionOpen;
import org.tugtest.rule.written.DeviceUnwired;
import org.tugtest.rule.written.ExpectationUnmet;
import org.tugtest.rule.written.FileUnreadable;
import org.tugtest.rule.written.FileUnused;
import org.tugtest.rule.written.IdGivenTwice;
import org.tugtest.rule.written.PartUnused;
import org.tugtest.rule.written.ReferenceUnresolved;
import org.tugtest.rule.written.RemovedStillJoined;
import org.tugtest.rule.written.RestsOnGuess;
import org.tugtest.rule.written.ShapeWrong;
import org.tugtest.rule.written.VoltageOutOfScope;
import org.tugtest.rule.written.WaiverEndsSoon;
import org.tugtest.rule.written.WaiverExpired;
import org.tugtest.rule.written.WaiverIdle;
import org.tugtest.rule.written.WireEndOpen;
import org.tugtest.rule.written.WireRepeated;

/** All rules, in the order of the reports: ours by heading, then a team's own by id. */
public final class RuleCatalog {
  private final Map<String, Rule> rules;

  private RuleCatalog(Map<String, Rule> rules) {
    this.rules = rules;
  }

  /** The rules of this module. A test names a rule class that is missing here. */
  public static RuleCatalog standard() {
    return of(
        List.of(
            new FileUnreadable(),
            new ShapeWrong(),
            new ReferenceUnresolved(),
            new IdGivenTwice(),
            new WireEndOpen(),
            new CavityDoubled(),
            new CavityUnknown(),
            new WireRepeated(),
            new AreaReadsAsGauge(),
            new FileUnused(),
            new PartUnused(),
            new DeviceUnwired(),
            new ExpectationUnmet(),
            new WaiverExpired(),
            new WaiverIdle(),
            new WaiverEndsSoon(),
            new DecisionOpen(),
            new RemovedStillJoined(),
            new RestsOnGuess(),
            new VoltageOutOfScope(),
            new ConnectorUnmated(),
            new HalvesDoNotFit(),
            new ContactOneSided(),
            new CircuitCrossesOver(),
            new CrossMatingPossible(),
            new TerminalUnfitForCavity(),
            new TerminalUnfitForWire(),
            new SealUnfitForWire(),
            new TerminalOverloaded(),
            new CavityUnsealed(),
            new LivePinsExposed(),
            new StudOverstacked(),
            new SpliceUnderfilled(),
            new SpliceOverfilled(),
            new ColourAmbiguous(),
            new LabelMissing(),
            new LabelRepeated(),
            new FaceMirrored(),
            new SpareCavitiesFew(),
            new ConnectorCouldMerge(),
            new SupplyShorted(),
            new DiodeAcrossSupply(),
            new FuseMissingUpstream(),
            new FuseFarFromSource(),
            new GaugeUnderFuse(),
            new ReturnUnderFuse(),
            new FuseDoesNotClear(),
            new FuseBreakingCapacityLow(),
            new FuseNotSelective(),
            new WireBurnsBeforeFuse(),
            new FuseVoltageLow(),
            new FuseInReturn(),
            new TripMayFailClosed(),
            new IsolatorBypassed(),
            new IsolatorInReturn(),
            new IsolatorLeavesLoadDump(),
            new GaugeUnderLoad(),
            new WireOverheats(),
            new LoadUnfed(),
            new LoadWithoutReturn(),
            new VoltsUnderLeast(),
            new VoltsOverMost(),
            new VoltageDropExcessive(),
            new LoadBackfed(),
            new FigureMissing(),
            new ContactSetTwice(),
            new SourcesSideBySide(),
            new SourceOverloaded(),
            new SupplyCollapses(),
            new RelayChatters(),
            new RelayHoldsItself(),
            new SwitchOverloaded(),
            new ContactWeldsOnInrush(),
            new FuseNearRating(),
            new FuseNuisanceInrush(),
            new ReferenceShifted(),
            new SensorEarthShared(),
            new EarthSingle(),
            new ParallelSharesUnevenly(),
            new ScreenMisearthed(),
            new BusMisterminated(),
            new CoilUnsuppressed(),
            new PairSplit(),
            new RouteBroken(),
            new SegmentTooShort(),
            new WireTooShort(),
            new WireTooLong(),
            new CircuitDoublesBack(),
            new BendTooTight(),
            new CoveringOverfilled(),
            new CoveringMissing(),
            new CoveringLoose(),
            new MaterialTooCool(),
            new SupportSpanLong(),
            new ClearanceSmall(),
            new SpliceMisplaced(),
            new FeedsNearSignals(),
            new LoomOverweight(),
            new BuiltOtherwise(),
            new BuiltThinner(),
            new BuiltOtherPart(),
            new BuiltOtherColour(),
            new BuiltLengthOff(),
            new ReadingOpen(),
            new ReadingJoined(),
            new ReadingHigh()));
  }

  /** These rules. Two of the same id are refused with an {@link IllegalArgumentException}. */
  public static RuleCatalog of(List<Rule> rules) {
    Map<String, Rule> byId = new LinkedHashMap<>();
    for (Rule rule : rules) {
      Rule present = byId.putIfAbsent(rule.info().id(), rule);
      if (present != null) {
        throw new IllegalArgumentException(
            "two rules are called "
                + rule.info().id()
                + ": "
                + present.getClass().getName()
                + " and "
                + rule.getClass().getName());
      }
    }
    return new RuleCatalog(byId);
  }

  /** These and a team's own rules, found as services by {@code loader}, sorted by id. */
  public RuleCatalog withServices(ClassLoader loader) {
    List<Rule> all = new ArrayList<>(rules.values());
    ServiceLoader.load(Rule.class, loader).stream()
        .map(ServiceLoader.Provider::get)
        .sorted(Comparator.comparing(rule -> rule.info().id()))
        .forEach(all::add);
    return of(all);
  }

  /** All rules. */
  public List<Rule> rules() {
    return List.copyOf(rules.values());
  }

  /** What there is to say of every rule. */
  public List<RuleInfo> infos() {
    return rules.values().stream().map(Rule::info).toList();
  }

  /** The rule of that id. */
  public Optional<Rule> rule(String id) {
    return Optional.ofNullable(rules.get(id));
  }

  /** The ids and settings that {@code limits} and {@code waivers} may name. */
  public KnownRules known() {
    Map<String, Map<String, KnownRules.Range>> known = new LinkedHashMap<>();
    for (RuleInfo info : infos()) {
      Map<String, KnownRules.Range> settings = new LinkedHashMap<>();
      for (Setting setting : info.settings()) {
        settings.put(
            setting.name(),
            new KnownRules.Range(setting.least(), setting.greatest(), setting.unit()));
      }
      known.put(info.id(), Map.copyOf(settings));
    }
    return new KnownRules(known);
  }
}
