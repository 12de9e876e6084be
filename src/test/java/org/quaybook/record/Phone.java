package org.quaybook.record;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.logging.Level;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.ExpectedCondition;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real browser without a window, made as wide as a phone. */
final class Phone implements AutoCloseable {

    private static final Path BROWSER = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /** WCAG 2.2 at level AA. */
    private static final List<String> RULES = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    private final ChromeDriver driver;

    /** A browser as it comes, with text of 16 CSS pixels. */
    Phone() {
        this(16);
    }

    /** @param textSize the reader's own setting of the text size, in CSS pixels */
    Phone(int textSize) {
        for (Path needed : List.of(BROWSER, DRIVER)) {
            assertThat(needed)
                    .as("the pages are tested in a real browser: install it (Debian: apt-get install chromium"
                            + " chromium-driver)")
                    .exists();
        }
        this.driver = new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(DRIVER.toFile())
                        .usingAnyFreePort()
                        .build(),
                options(textSize));
    }

    private static ChromeOptions options(int textSize) {
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(BROWSER.toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--no-first-run",
                "--no-default-browser-check");
        options.setExperimentalOption("prefs", Map.of("webkit.webprefs.default_font_size", textSize));
        options.setCapability("goog:loggingPrefs", logs);
        return options;
    }

    /** Makes the window so many CSS pixels wide and opens an address there. */
    void open(String address, int width) {
        open(address, width, 844);
    }

    /** The same with a window so many CSS pixels high. */
    void open(String address, int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 2, "mobile", true));
        driver.manage().logs().get(LogType.BROWSER);
        driver.manage().logs().get(LogType.PERFORMANCE);
        driver.get(address);
    }

    void javaScript(boolean on) {
        driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !on));
    }

    /** Names of elements that reach out of the window on the right; empty when nothing scrolls sideways. */
    @SuppressWarnings("unchecked")
    List<String> wider() {
        return (List<String>) Objects.requireNonNull(driver.executeScript("""
                const room = document.documentElement.clientWidth;
                const wide = [...document.querySelectorAll('body *')]
                    .filter(e => e.getBoundingClientRect().right > room + 0.5 && !e.classList.contains('skip')
                        && e.closest('.diagram, .wide') === null)
                    .map(e => e.tagName + ' ' + e.textContent.trim().slice(0, 40));
                return document.documentElement.scrollWidth > room ? ['page', ...wide] : wide;
                """));
    }

    /** What has no place to break and stands on several lines all the same, in elements that a selector finds. */
    @SuppressWarnings("unchecked")
    List<String> torn(String selector) {
        return (List<String>) Objects.requireNonNull(driver.executeScript("""
                const torn = [];
                for (const element of document.querySelectorAll(arguments[0])) {
                    const texts = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
                    while (texts.nextNode()) {
                        for (const run of texts.currentNode.data.matchAll(/[^ \\t\\n\\-\\/]+/g)) {
                            const range = document.createRange();
                            range.setStart(texts.currentNode, run.index);
                            range.setEnd(texts.currentNode, run.index + run[0].length);
                            if (new Set([...range.getClientRects()].map(r => Math.round(r.top))).size > 1) {
                                torn.push(run[0]);
                            }
                        }
                    }
                }
                return torn;
                """, selector));
    }

    /** The lower edge of an element from the top of the page, in CSS pixels. */
    double bottom(String selector) {
        return number("return document.querySelector(arguments[0]).getBoundingClientRect().bottom + scrollY", selector);
    }

    /** The least height or width of any element that a selector finds, in CSS pixels. */
    double leastSide(String selector) {
        return number(
                "return Math.min(...[...document.querySelectorAll(arguments[0])].flatMap(e => {"
                        + "const b = e.getBoundingClientRect(); return [b.width, b.height]; }))",
                selector);
    }

    private double number(String script, String selector) {
        return ((Number) Objects.requireNonNull(driver.executeScript(script, selector))).doubleValue();
    }

    /** What the first press of the tab key leads to, once it can be seen; empty if it cannot. */
    String firstStop() {
        driver.findElement(By.tagName("body")).sendKeys(Keys.TAB);
        WebElement stop = driver.switchTo().activeElement();
        return stop.isDisplayed() && stop.getLocation().getX() >= 0 ? stop.getText() : "";
    }

    /** Whether the first element that a selector finds can be seen. */
    boolean shown(String selector) {
        return driver.findElement(By.cssSelector(selector)).isDisplayed();
    }

    /** Follows the link of this text. */
    void follow(String link) {
        driver.findElement(By.linkText(link)).click();
    }

    /** Presses a link that a selector finds, and waits until the file that it saves is whole. */
    Path saved(String selector, Path folder) {
        driver.executeCdpCommand(
                "Browser.setDownloadBehavior", Map.of("behavior", "allow", "downloadPath", folder.toString()));
        WebElement link = driver.findElement(By.cssSelector(selector));
        Path file = folder.resolve(Objects.requireNonNull(link.getDomAttribute("download")));
        driver.executeScript("arguments[0].click()", link);
        await(page -> Files.exists(file), file.toString());
        return file;
    }

    /** What the address bar shows. */
    String address() {
        return Objects.requireNonNull(driver.getCurrentUrl());
    }

    void reload() {
        driver.navigate().refresh();
    }

    /** Whether a script that somebody slips into the page runs. */
    boolean runsForeignScript() {
        return Boolean.TRUE.equals(driver.executeScript("""
                const script = document.createElement('script');
                script.textContent = 'window.foreign = true';
                document.body.append(script);
                return window.foreign === true;
                """));
    }

    /** Presses what a selector finds. */
    void click(String selector) {
        driver.executeScript("document.querySelector(arguments[0]).click()", selector);
    }

    /** Throws away what the browser has kept of the page for when there is no signal. */
    void forgetKept() {
        driver.executeAsyncScript("""
                const done = arguments[0];
                navigator.serviceWorker.getRegistrations()
                    .then(all => Promise.all(all.map(one => one.unregister())))
                    .then(() => caches.keys())
                    .then(names => Promise.all(names.map(name => caches.delete(name))))
                    .then(() => done(true));
                """);
    }

    /** Types into a field and sends its form. */
    void type(String id, String text) {
        driver.findElement(By.id(id)).sendKeys(text, Keys.ENTER);
    }

    /** Types into a field and leaves it. */
    void enter(String id, String text) {
        WebElement field = driver.findElement(By.id(id));
        field.clear();
        field.sendKeys(text, Keys.TAB);
    }

    /** Puts texts into fields, by their ids, as if each had been typed. */
    void enterAll(Map<String, String> texts) {
        driver.executeScript("""
                Object.entries(arguments[0]).forEach(([id, text]) => {
                  const field = document.getElementById(id);
                  field.value = text;
                  field.dispatchEvent(new Event('change', { bubbles: true }));
                });
                """, texts);
    }

    /** An attribute of each element that a selector finds; empty where it has none. */
    @SuppressWarnings("unchecked")
    List<String> attributes(String selector, String name) {
        return (List<String>) Objects.requireNonNull(driver.executeScript(
                "return [...document.querySelectorAll(arguments[0])].map(e => e.getAttribute(arguments[1]) ?? '')",
                selector,
                name));
    }

    /** Waits until a text can be seen. */
    void awaitText(String text) {
        await(page -> text().contains(text), text);
    }

    /** Waits until an element stands at the top of the window. */
    void awaitTop(String selector) {
        await(
                page -> Math.abs(number(
                                "return document.querySelector(arguments[0]).getBoundingClientRect().top", selector))
                        < 2,
                selector + " at the top");
    }

    /** Waits until a service worker looks after the page. */
    void awaitKept() {
        await(
                page -> Boolean.TRUE.equals(driver.executeAsyncScript(
                        "const done = arguments[0]; navigator.serviceWorker.ready.then(() => done(true))")),
                "a service worker");
    }

    private void await(ExpectedCondition<Boolean> condition, String what) {
        new WebDriverWait(driver, PATIENCE)
                .withMessage(what)
                .ignoring(WebDriverException.class)
                .until(condition);
    }

    /** All text that can be seen. */
    String text() {
        return driver.findElement(By.tagName("body")).getText();
    }

    /** What the browser had to say, such as a refused style or a file not found. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::toString)
                .toList();
    }

    /** The text size of an element, in CSS pixels. */
    double textSize(String selector) {
        return number("return parseFloat(getComputedStyle(document.querySelector(arguments[0])).fontSize)", selector);
    }

    /** Every address that the page made the browser ask for, data addresses left out. */
    List<String> requests() {
        return StreamSupport.stream(
                        driver.manage().logs().get(LogType.PERFORMANCE).spliterator(), false)
                .map(LogEntry::getMessage)
                .map(Phone::json)
                .map(entry -> entry.path("message"))
                .filter(message -> message.path("method").asText().equals("Network.requestWillBeSent"))
                .map(message ->
                        message.path("params").path("request").path("url").asText())
                .filter(url -> !url.startsWith("data:"))
                .toList();
    }

    private static JsonNode json(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What axe-core finds against WCAG 2.2 AA, one line a place. */
    List<String> barriers() {
        Results results = new AxeBuilder().withTags(RULES).analyze(driver);
        assertThat(results.getPasses())
                .extracting(Rule::getId)
                .as("rules that axe-core could apply")
                .contains("color-contrast", "document-title", "html-has-lang");
        return results.getViolations().stream().flatMap(rule -> places(rule)).toList();
    }

    private static Stream<String> places(Rule rule) {
        return rule.getNodes().stream().map(node -> rule.getId() + ": " + node.getHtml());
    }

    /** Prints the page on A4. */
    byte[] print() {
        Map<String, Object> printed = driver.executeCdpCommand(
                "Page.printToPDF", Map.of("preferCSSPageSize", true, "paperWidth", 8.27, "paperHeight", 11.69));
        return Base64.getDecoder().decode((String) Objects.requireNonNull(printed.get("data")));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
