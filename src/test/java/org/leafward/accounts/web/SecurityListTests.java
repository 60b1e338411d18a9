package org.leafward.accounts.web;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.Secret;
import org.leafward.support.EmptyServer;
import org.leafward.support.SharedData;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.HttpMethod;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

/**
 * The list of what OWASP's Application Security Verification Standard 5.0.0 asks for at
 * level 2 ({@code shared/security/asvs.csv}), and those of its items that no other test
 * shows.
 */
@EmptyServer
class SecurityListTests {

	private static final Path MAIN = Path.of("src/main/java");

	private static final Path TESTS = Path.of("src/test/java");

	@Autowired
	private MockMvc web;

	@Autowired
	private JdbcClient database;

	@Value("${spring.session.timeout}")
	private String timeout;

	@Test
	void everyItemNamesATestThatIsThere() {
		List<String[]> rows = SharedData.table("security/asvs.csv");
		assertThat(rows).hasSizeGreaterThan(60);
		Map<String, String> sources = sources(TESTS)
			.collect(Collectors.toMap((file) -> file.getFileName().toString().replace(".java", ""),
					SecurityListTests::read, (one, other) -> one + other));
		for (String[] row : rows) {
			assertThat(row[1]).as(row[0]).isIn("met", "partly", "not");
			assertThat(row[2]).as(row[0]).isNotBlank();
			String test = (row.length > 3) ? row[3] : "";
			if (row[1].equals("met")) {
				assertThat(test).as(row[0]).isNotBlank();
			}
			if (!test.isBlank()) {
				String[] parts = test.split("#");
				assertThat(sources).as(row[0]).containsKey(parts[0]);
				if (parts.length > 1) {
					assertThat(sources.get(parts[0])).as(row[0]).contains("void " + parts[1] + "(");
				}
			}
		}
	}

	/** Item 1.2.4. Only names of tables from the code itself are ever put into SQL. */
	@Test
	void noSqlIsPutTogetherFromWords() {
		List<String> found = sources(MAIN).filter((file) -> read(file).matches(
				"(?s).*(?i)\"[^\"\\n]*\\b(select|update|delete|insert)\\b[^\"\\n]*(where|values|set)[^\"\\n]*\"\\s*\\+\\s*(?!\\()[a-z]\\w*\\s*[+;).].*"))
			.map(Path::toString)
			.toList();
		assertThat(found).isEmpty();
	}

	/** Item 1.3.2. */
	@Test
	void nothingIsEvaluated() {
		JavaClasses classes = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
			.importPackages("org.leafward");
		// It names its provider itself and looks up domain names only.
		noClasses().that()
			.doNotHaveSimpleName("DnsTexts")
			.should()
			.dependOnClassesThat()
			.resideInAnyPackage("org.springframework.expression..", "javax.script..", "groovy..", "java.rmi..",
					"javax.naming..")
			.check(classes);
	}

	/** Item 3.5.1. */
	@Test
	void aFormWithoutItsSecretIsRefused() throws Exception {
		for (String form : List.of("/sign-in", "/sign-in/link", "/sign-in/once", "/sign-out")) {
			assertThat(
					this.web.perform(post(form).param("email", "a@example.org")).andReturn().getResponse().getStatus())
				.as(form)
				.isEqualTo(403);
		}
	}

	/** Item 6.3.2. */
	@Test
	void nobodyIsThereByDefault() throws Exception {
		assertThat(this.database.sql("select count(*) from accounts.role").query(Integer.class).single()).isZero();
		MockHttpServletResponse empty = this.web.perform(get("/api/v1/people").header("Authorization", "Bearer "))
			.andReturn()
			.getResponse();
		assertThat(empty.getStatus()).isEqualTo(401);
	}

	/** Items 6.5.3, 11.4.1 and 11.5.1: 256 bits in 43 characters (RFC 4648). */
	@Test
	void secretsAreLongAndNeverTheSame() {
		Set<String> made = new HashSet<>();
		for (int i = 0; i < 10_000; i++) {
			made.add(Secret.make());
		}
		assertThat(made).hasSize(10_000).allMatch((one) -> one.matches("[A-Za-z0-9_-]{43}"));
		// NIST FIPS 180-2, appendix B.1.
		assertThat(Secret.hash("abc")).asHexString()
			.isEqualToIgnoringCase("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
	}

	/** Item 7.3.1. */
	@Test
	void sessionsEndByThemselves() throws Exception {
		assertThat(this.timeout).isEqualTo("14d");
		this.web.perform(get("/sites")).andReturn();
		assertThat(this.database.sql("select distinct max_inactive_interval from accounts.session")
			.query(Integer.class)
			.list()).containsExactly(14 * 24 * 3600);
	}

	/** Item 7.4.4: the layout has it, and every page is made from the layout. */
	@Test
	void everyPageHasTheWayOut() {
		assertThat(read(Path.of("src/main/resources/templates/layout.html"))).contains("@{/sign-out}");
	}

	/** Items 13.4.3 and 13.4.4. */
	@Test
	void nothingIsListedOrTraced() throws Exception {
		MockHttpServletResponse folder = this.web.perform(get("/css/")).andReturn().getResponse();
		assertThat(folder.getStatus()).isEqualTo(404);
		assertThat(this.web.perform(request(HttpMethod.TRACE, "/sign-in")).andReturn().getResponse().getStatus())
			.isIn(400, 403, 405);
	}

	/** Items 14.2.3 and 14.3.3. */
	@Test
	void noPageAsksAnotherServer() {
		for (Path template : templates()) {
			assertThat(read(template)).as(template.toString())
				// Scripts are files of this server, on the page that asks a browser for a
				// subscription and on those that change in place.
				.doesNotContain(template.endsWith("reminders/push.html") || template.endsWith("layout.html")
						|| template.endsWith("workdays/checklist.html") ? "<script>" : "<script")
				.doesNotContainPattern("(?:src|href)=\"https?://(?!www\\.w3\\.org)")
				.doesNotContain("localStorage");
		}
	}

	/** Item 14.3.3. */
	@Test
	void scriptsKeepNothingInTheBrowser() throws IOException {
		try (Stream<Path> scripts = Files.list(Path.of("src/main/resources/static/js"))) {
			List<Path> all = scripts.toList();
			assertThat(all).hasSize(5);
			for (Path script : all) {
				// Ticks of a workday wait for a connection: identifiers of tasks, yes or
				// no, and when.
				boolean queue = script.endsWith("checklist.js");
				// The one page that is meant to be kept: the list of a workday, until the
				// day
				// after it.
				boolean list = script.endsWith("checklist-worker.js");
				assertThat(read(script)).as(script.toString())
					.doesNotContainPattern(
							(queue ? "" : list ? "localStorage|" : "localStorage|fetch\\(|") + (list ? "" : "caches|")
									+ "sessionStorage|indexedDB|document\\.cookie|XMLHttpRequest|innerHTML|eval");
			}
		}
	}

	/** Item 14.3.2. */
	@Test
	void pagesAreKeptByNoCache() throws Exception {
		assertThat(this.web.perform(get("/sign-in")).andReturn().getResponse().getHeader("Cache-Control"))
			.contains("no-store");
	}

	private static List<Path> templates() {
		try (Stream<Path> files = Files.walk(Path.of("src/main/resources/templates"))) {
			return files.filter((file) -> file.toString().endsWith(".html")).toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static Stream<Path> sources(Path root) {
		try (Stream<Path> files = Files.walk(root)) {
			return files.filter((file) -> file.toString().endsWith(".java")).toList().stream();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static String read(Path file) {
		try {
			return Files.readString(file);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
