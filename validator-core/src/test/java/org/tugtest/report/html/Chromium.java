package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.TimeoutException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.FluentWait;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The machine's own Chromium, without a window and without a way into any network; for tests. */
public final class Chromium implements AutoCloseable {
  /** How long a test waits for what the browser or a page does in its own time. */
  private static final Duration PATIENCE = Duration.ofSeconds(30);

  /** How long the browser may take to start, to load a page, to run one script. */
  private static final Duration SLOW_MACHINE = Duration.ofMinutes(3);

  private final ChromeDriver driver;
  private final Path folder;

  private Chromium(ChromeDriver driver, Path folder) {
    this.driver = driver;
    this.folder = folder;
  }

  /** What browser and driver put down there, profile and sockets, is taken away in the end. */
  private static Path temporary() {
    try {
      return Files.createTempDirectory("chromium");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static boolean isInstalled() {
    return browser().isPresent() && chromedriver().isPresent();
  }

  private static Optional<Path> browser() {
    return onPath("chromium", "chromium-browser", "google-chrome");
  }

  private static Optional<Path> chromedriver() {
    return onPath("chromedriver");
  }

  /** Starts it with a fresh profile. */
  static Chromium start() {
    Path folder = temporary();
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(browser().orElseThrow().toFile());
    options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
    options.setPageLoadTimeout(SLOW_MACHINE);
    options.setScriptTimeout(SLOW_MACHINE);
    options.addArguments(
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--disable-dev-shm-usage",
        "--hide-scrollbars",
        "--host-resolver-rules=MAP * ~NOTFOUND");
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(chromedriver().orElseThrow().toFile())
            .usingAnyFreePort()
            .withTimeout(SLOW_MACHINE)
            .withEnvironment(Map.of("TMPDIR", folder.toString()))
            .build();
    // A run that is broken off leaves no browser behind.
    Runtime.getRuntime().addShutdownHook(new Thread(service::stop));
    return new Chromium(new ChromeDriver(service, options), folder);
  }

  private static Optional<Path> onPath(String... names) {
    return Stream.of(names)
        .flatMap(
            name ->
                Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                    .map(folder -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** To click and type with. */
  public ChromeDriver driver() {
    return driver;
  }

  /**
   * Opens a page from disk, at a fragment such as {@code #x} when that is not empty, with the mouse
   * in its corner.
   */
  public void open(Path file, String fragment) {
    driver.get("about:blank");
    command("Input.dispatchMouseEvent", Map.of("type", "mouseMoved", "x", 0, "y", 0));
    driver.get(file.toAbsolutePath().toUri() + fragment);
  }

  /** As most people begin: a wide window, light, scripts allowed. */
  void desk() {
    scripts(true);
    size(1280, 900);
    media("screen", "light");
  }

  /** The size of the window, in CSS pixels. */
  public void size(int width, int height) {
    command(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    until(
        "a window of " + width + " by " + height,
        () ->
            assertThat(ask("return innerWidth + ' by ' + innerHeight"))
                .isEqualTo(width + " by " + height));
  }

  /** {@code screen} or {@code print}, {@code light} or {@code dark}. */
  public void media(String media, String scheme) {
    command(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            media,
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    String query = "(prefers-color-scheme: " + scheme + ")";
    String all = media.isEmpty() ? query : media + " and " + query;
    until(all, () -> assertThat(ask("return matchMedia('" + all + "').matches")).isEqualTo("true"));
  }

  /** Whether pages may run scripts from now on. */
  public void scripts(boolean allowed) {
    command("Emulation.setScriptExecutionDisabled", Map.of("value", !allowed));
  }

  /** A command of the protocol for developers. */
  public Map<String, Object> command(String name, Map<String, Object> parameters) {
    return driver.executeCdpCommand(name, parameters);
  }

  /**
   * Asks until it holds, at most for half a minute. For everything that a browser tells a page in
   * its own time: a changed fragment, a moved focus, a timer, a file that is saved. Fails with what
   * was awaited and what was wrong at last.
   */
  public void until(String awaited, ThrowingCallable holds) {
    AtomicReference<Throwable> wrong = new AtomicReference<>();
    try {
      new FluentWait<>(holds)
          .withTimeout(PATIENCE)
          .pollingEvery(Duration.ofMillis(20))
          .until(again -> isTrue(again, wrong));
    } catch (TimeoutException late) {
      throw new AssertionError(
          "Awaited for " + PATIENCE.toSeconds() + " s: " + awaited + ". At last: " + wrong.get(),
          wrong.get());
    }
  }

  private static boolean isTrue(ThrowingCallable holds, AtomicReference<Throwable> wrong) {
    try {
      holds.call();
      return true;
    } catch (Throwable notYet) {
      wrong.set(notYet);
      return false;
    }
  }

  /** Waits until the page has been drawn anew and what it had waiting has run. */
  public void settle() {
    driver.executeAsyncScript(
        "const done = arguments[0];"
            + " requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done)));");
  }

  /** Clicks in the middle of the window, clear of what sticks to its edges. */
  public void click(WebElement element) {
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
    element.click();
  }

  /** What a script answers, as text. */
  public String ask(String script) {
    return String.valueOf(driver.executeScript(script));
  }

  /** What the console says that is worse than information. */
  public List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(entry -> entry.getLevel().intValue() > Level.INFO.intValue())
        .map(entry -> entry.getMessage())
        .toList();
  }

  /**
   * The addresses of all that was asked for since the last call; waits for one that has to be among
   * them.
   */
  public List<String> requestsUpTo(String last) {
    List<String> all = new ArrayList<>();
    until(
        "a request for " + last,
        () -> {
          all.addAll(requests());
          assertThat(all).contains(last);
        });
    return all;
  }

  /** The addresses of all that was asked for since the last call. */
  public List<String> requests() {
    return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
        .map(entry -> JsonMapper.shared().readTree(entry.getMessage()).path("message"))
        .filter(event -> event.path("method").asString("").equals("Network.requestWillBeSent"))
        .map(event -> event.at("/params/request/url"))
        .map(JsonNode::asString)
        .toList();
  }

  /** The texts of the page that stand out too little from what is behind them; empty: none. */
  public String tooFaint() throws IOException {
    return ask(Files.readString(Path.of("src/test/resources/org/tugtest/report/html/contrast.js")));
  }

  /** The page as it is printed, in light. */
  public byte[] pdf() {
    media("", "light");
    Map<String, Object> printed = command("Page.printToPDF", Map.of("preferCSSPageSize", true));
    return Base64.getDecoder().decode(printed.get("data").toString());
  }

  /** Keeps a picture of the window. */
  public void picture(Path file) throws IOException {
    Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
  }

  @Override
  public void close() {
    driver.quit();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(one);
      }
    } catch (IOException | UncheckedIOException held) {
      // A process of the browser that ends late still writes there; no page is worse for it.
    }
  }
}
