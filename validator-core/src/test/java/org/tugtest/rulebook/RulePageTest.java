package org.tugtest.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;

class RulePageTest {
  private static final RuleInfo FULL =
      RuleInfo.of("lamp-dim", Heading.LOAD, Level.WARNING)
          .summary("a lamp gets too few volts")
          .subjects("lamps")
          .looksFor("Lamps under <half> of a * or a | b.\nIn any `state`.")
          .why("Nobody sees the car.")
          .remedy("Use a thicker wire.")
          .basis("Common practice.")
          .causes(Cause.WIRE_UNDER_LOAD)
          .follows(Cause.SUPPLY_SHORTED, Cause.VOLTS_WRONG)
          .setting(new Setting("percent", 10, 0.5, 50, "%", "drop that\n  is allowed"))
          .failing("{\"format\": 1}\n")
          .passing("{\"format\": 1, \"sketch\": true}\n")
          .build();

  @Test
  void markdown() {
    assertThat(RulePage.markdown(FULL))
        .isEqualTo(
            """
            # lamp-dim

            A lamp gets too few volts.

            | heading | level | judges |
            | --- | --- | --- |
            | load | warning | lamps |

            ## What it looks for

            Lamps under &lt;half> of a \\* or a \\| b.
            In any \\`state\\`.

            ## Why it matters

            Nobody sees the car.

            ## How to put it right

            Use a thicker wire.

            ## Basis

            Common practice.

            ## Cause and consequence

            A finding is listed under its cause where it follows from

            - a source of wrong volts
            - a short across a source

            What follows from it is listed under it.

            ## Settings

            | name | standard | least | greatest | unit | meaning |
            | --- | --- | --- | --- | --- | --- |
            | `percent` | 10 | 0.5 | 50 | % | drop that is allowed |

            Changed for a harness, or for one place, under `limits`:

            ```json
            {"limits": {"lamp-dim": {"percent": 10}}}
            ```

            ## It fires in

            ```json
            {"format": 1}
            ```

            ## It does not fire in

            ```json
            {"format": 1, "sketch": true}
            ```

            ## Accepting a finding

            ```json
            {"waivers": {"NAME": {"rule": "lamp-dim", "at": "PLACE", "reason": "REASON", "until": "YEAR-MONTH-DAY"}}}
            ```
            """);
  }

  @Test
  void text() {
    assertThat(RulePage.text(FULL))
        .isEqualTo(
            """
            lamp-dim (load, warning)
            A lamp gets too few volts.
            Judges: lamps.

            What it looks for
              Lamps under <half> of a * or a | b.
              In any `state`.

            Why it matters
              Nobody sees the car.

            How to put it right
              Use a thicker wire.

            Basis
              Common practice.

            Cause and consequence
              A finding is listed under its cause where it follows from

              - a source of wrong volts
              - a short across a source

              What follows from it is listed under it.

            Settings
              percent: 10 % (0.5 to 50): drop that is allowed
              {"limits": {"lamp-dim": {"percent": 10}}}

            It fires in
              {"format": 1}

            It does not fire in
              {"format": 1, "sketch": true}

            Accepting a finding
              {"waivers": {"NAME": {"rule": "lamp-dim", "at": "PLACE", "reason": "REASON", "until": "YEAR-MONTH-DAY"}}}
            """);
  }

  @Test
  void aRuleThatSaysLittleHasAPageToo() {
    RuleInfo bare = RuleInfo.of("team-x", Heading.BODY, Level.NOTE).build();
    assertThat(RulePage.text(bare))
        .startsWith("team-x (body, note)\nteam-x\n")
        .doesNotContain("Why");
    assertThat(RulePage.markdown(bare)).doesNotContain("Settings").doesNotContain("fires");
  }

  @Test
  void theIndexGoesByHeading() {
    RuleInfo first =
        RuleInfo.of("a-b", Heading.WRITTEN, Level.ERROR).summary("one | <two>").build();
    assertThat(RuleIndex.markdown(List.of(FULL, first)))
        .isEqualTo(
            """
            # The rules

            ## written

            | rule | level | finds that |
            | --- | --- | --- |
            | [a-b](a-b.md) | error | one \\| &lt;two> |

            ## load

            | rule | level | finds that |
            | --- | --- | --- |
            | [lamp-dim](lamp-dim.md) | warning | a lamp gets too few volts |
            """);
    assertThat(RuleIndex.text(List.of(FULL, first)))
        .isEqualTo(
            """
            written
              a-b       error   one | <two>

            load
              lamp-dim  warning a lamp gets too few volts
            """);
  }
}
