package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.json.JsonMapper;

class PageJsonTest {
  private static String written(String text) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = PageJson.to(out)) {
      json.writeString(text);
    }
    return out.toString();
  }

  @Test
  void holdsNothingThatEndsTheScriptElement() {
    assertThat(written("</script><!-- & ' \u2028 \u2029"))
        .isEqualTo("\"\\u003C/script\\u003E\\u003C!-- \\u0026 \\u0027 \\u2028 \\u2029\"");
  }

  @Test
  void saysTheSameAfterReading() {
    String text = "</script> & \" \\ \u2028 ü 🔋 \u0000 \n";
    assertThat(JsonMapper.shared().readTree(written(text)).asString()).isEqualTo(text);
  }
}
