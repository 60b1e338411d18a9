package org.leafward.pages.web;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.springframework.beans.factory.support.StaticListableBeanFactory;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.http.MediaType;
import org.springframework.jdbc.CannotGetJdbcConnectionException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.servlet.View;

import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.pages.Formats;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.instanceOf;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.model;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.view;

/**
 * Members and media type of problem details: RFC 9457, 3 and 3.1. Status codes: RFC 9110,
 * 15; 507: RFC 4918, 11.5. SQLSTATE 53100: PostgreSQL manual, appendix A.
 */
@ExtendWith(OutputCaptureExtension.class)
class ErrorAnswersTests {

	private static final Viewer NORA = new Viewer(null, "Nora", true, false);

	private final MockMvc mvc = mvc();

	@ParameterizedTest
	@CsvSource({ "bad, 400", "gone, 404", "full, 507", "broken, 500" })
	void programsGetProblemDetailsAndBrowsersAPage(String trouble, int status) throws Exception {
		this.mvc.perform(get("/api/v1/trouble").param("what", trouble))
			.andExpect(status().is(status))
			.andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
			.andExpect(jsonPath("$.status").value(status))
			.andExpect(jsonPath("$.title").isString())
			.andExpect(jsonPath("$.instance").value("/api/v1/trouble"))
			.andExpect(content().string(not(containsString("secret"))));
		this.mvc.perform(get("/trouble").param("what", trouble).accept(MediaType.TEXT_HTML))
			.andExpect(status().is(status))
			.andExpect(view().name("error"))
			.andExpect(model().attribute("status", status))
			.andExpect(model().attribute("viewer", NORA))
			.andExpect(model().attribute("formats", instanceOf(Formats.class)));
	}

	@Test
	void badInputSaysWhatWhereAndHowToMendIt() throws Exception {
		this.mvc.perform(get("/api/v1/trouble").param("what", "bad"))
			.andExpect(jsonPath("$.detail").value("latitude 91 is outside -90 to 90"))
			.andExpect(jsonPath("$.where").value("latitude"))
			.andExpect(jsonPath("$.mend").value("give degrees north"));
		this.mvc.perform(get("/trouble").param("what", "bad"))
			.andExpect(model().attribute("what", "latitude 91 is outside -90 to 90"))
			.andExpect(model().attribute("where", "latitude"))
			.andExpect(model().attribute("mend", "give degrees north"));
	}

	@Test
	void programsThatWantAnotherTypeStillGetTheProblem() throws Exception {
		this.mvc.perform(get("/api/v1/trouble").param("what", "gone").accept("text/calendar"))
			.andExpect(status().isNotFound())
			.andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
			.andExpect(jsonPath("$.detail").value("no such site"));
	}

	@Test
	void missingAndMalformedParametersAreNamed() throws Exception {
		this.mvc.perform(get("/api/v1/trouble"))
			.andExpect(status().isBadRequest())
			.andExpect(jsonPath("$.where").value("what"));
		this.mvc.perform(get("/api/v1/day").param("date", "yesterday"))
			.andExpect(status().isBadRequest())
			.andExpect(jsonPath("$.where").value("date"))
			.andExpect(content().string(not(containsString("java."))));
	}

	@Test
	void parametersAndFieldsOutsideTheirBoundsAreNamed() throws Exception {
		this.mvc.perform(get("/api/v1/size").param("size", "500"))
			.andExpect(status().isBadRequest())
			.andExpect(jsonPath("$.where").value("size"))
			.andExpect(jsonPath("$.detail").value("size must be less than or equal to 200"));
		this.mvc
			.perform(post("/api/v1/body").locale(Locale.ENGLISH)
				.contentType(MediaType.APPLICATION_JSON)
				.content("{\"count\":900}"))
			.andExpect(status().isBadRequest())
			.andExpect(jsonPath("$.where").value("count"));
	}

	@Test
	void bodiesMethodsAndTypesThatCannotBeTaken() throws Exception {
		this.mvc.perform(post("/api/v1/body").contentType(MediaType.APPLICATION_JSON).content("{"))
			.andExpect(status().isBadRequest())
			.andExpect(jsonPath("$.where").value("body, line 1, column 2"))
			.andExpect(content().string(not(containsString("tools.jackson"))));
		this.mvc.perform(post("/api/v1/body").contentType(MediaType.TEXT_PLAIN).content("x"))
			.andExpect(status().isUnsupportedMediaType())
			.andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON));
		this.mvc.perform(get("/api/v1/body"))
			.andExpect(status().isMethodNotAllowed())
			.andExpect(header().stringValues("Allow", "POST"))
			.andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON));
		this.mvc.perform(post("/trouble")).andExpect(status().isMethodNotAllowed()).andExpect(view().name("error"));
	}

	@Test
	void noConnectionIsBusyAndTheSecretOfAFeedIsNotLogged(CapturedOutput output) throws Exception {
		this.mvc.perform(get("/f/confidential/trouble").param("what", "busy"))
			.andExpect(status().isServiceUnavailable())
			.andExpect(header().exists("Retry-After"));
		this.mvc.perform(get("/f/confidential/trouble").param("what", "broken"))
			.andExpect(status().isInternalServerError());
		this.mvc.perform(get("/sites/2f0c5a8e-0c1b-4c2e-9d0e-3f1a2b4c5d6e/trouble").param("what", "broken"))
			.andExpect(status().isInternalServerError());
		assertThat(output)
			.contains("GET /f/{token}/trouble was answered with 503", "GET /f/{token}/trouble was answered with 500",
					"GET /sites/2f0c5a8e-0c1b-4c2e-9d0e-3f1a2b4c5d6e/trouble was answered with 500")
			.doesNotContain("confidential");
	}

	@Test
	void refusalsAreLeftToSecurity() {
		assertThatThrownBy(() -> this.mvc.perform(get("/api/v1/trouble").param("what", "denied")))
			.hasCauseInstanceOf(AccessDeniedException.class);
	}

	private static MockMvc mvc() {
		StaticListableBeanFactory beans = new StaticListableBeanFactory();
		beans.addBean("viewers", (Viewers) () -> NORA);
		PageAttributes attributes = new PageAttributes(beans.getBeanProvider(Viewers.class),
				beans.getBeanProvider(Clock.class));
		View nothing = new View() {
			@Override
			public void render(Map<String, ?> model, HttpServletRequest request, HttpServletResponse response) {
			}
		};
		return MockMvcBuilders.standaloneSetup(new Troubled())
			.setControllerAdvice(new ErrorAnswers(attributes), attributes)
			.setViewResolvers((name, locale) -> nothing)
			.build();
	}

	record Body(@Max(5) int count) {
	}

	@RestController
	static class Troubled {

		@GetMapping({ "/trouble", "/api/v1/trouble", "/f/{token}/trouble", "/sites/{site}/trouble" })
		String trouble(@RequestParam String what) {
			switch (what) {
				case "bad" -> throw new BadInput("latitude 91 is outside -90 to 90", "latitude", "give degrees north");
				case "gone" -> throw new NotThere("no such site");
				case "denied" -> throw new AccessDeniedException("no");
				case "busy" -> throw new CannotGetJdbcConnectionException("pool",
						new SQLTransientConnectionException("timed out"));
				case "full" -> throw new DataAccessResourceFailureException("secret",
						new SQLException("secret: could not extend file", "53100"));
				default -> throw new IllegalStateException("secret");
			}
		}

		@GetMapping("/api/v1/day")
		String day(@RequestParam LocalDate date) {
			return date.toString();
		}

		@GetMapping("/api/v1/size")
		String size(@RequestParam @Max(200) int size) {
			return String.valueOf(size);
		}

		@PostMapping("/api/v1/body")
		String body(@Valid @RequestBody Body body) {
			return body.toString();
		}

	}

}
