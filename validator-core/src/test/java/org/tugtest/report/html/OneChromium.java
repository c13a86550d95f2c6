package org.tugtest.report.html;

import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Gives tests the browser as a parameter: one for all classes, since its start takes seconds, and
 * for each test as on a desk. It ends after the last test. Classes are skipped where browser or
 * driver are not installed.
 */
public final class OneChromium
    implements ExecutionCondition, ParameterResolver, BeforeEachCallback {

  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    return Chromium.isInstalled()
        ? ConditionEvaluationResult.enabled("chromium and chromedriver are on the PATH")
        : ConditionEvaluationResult.disabled(
            "chromium and chromedriver are not both on the PATH: the pages were not tried in a"
                + " browser");
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Chromium.class;
  }

  @Override
  public Chromium resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return started(context);
  }

  @Override
  public void beforeEach(ExtensionContext context) {
    started(context).desk();
  }

  private static Chromium started(ExtensionContext context) {
    return context
        .getRoot()
        .getStore(Namespace.create(OneChromium.class))
        .getOrComputeIfAbsent(Chromium.class, type -> Chromium.start(), Chromium.class);
  }
}
