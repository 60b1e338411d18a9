package org.leafward.pages.web;

import jakarta.servlet.RequestDispatcher;
import org.junit.jupiter.api.Test;

import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.Import;
import org.springframework.http.MediaType;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.stereotype.Controller;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.bind.annotation.GetMapping;

import org.leafward.measure.BadInput;
import org.leafward.pages.NotForYou;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

/** The answers within Boot, beside its own problem details and its own error page. */
@WebMvcTest(properties = "spring.mvc.problemdetails.enabled=true")
@WithMockUser
class ErrorPageTests {

	@Autowired
	private MockMvc mvc;

	@Test
	void badInputIsAPageThatSaysHowToMendIt() throws Exception {
		this.mvc.perform(get("/bad").accept(MediaType.TEXT_HTML))
			.andExpect(status().isBadRequest())
			.andExpect(content().contentTypeCompatibleWith(MediaType.TEXT_HTML))
			.andExpect(content().string(containsString("count &lt;b&gt; is not a number")))
			.andExpect(content().string(containsString("write a whole number")))
			.andExpect(content().string(containsString("Leafward")));
	}

	@Test
	void addressesThatLeadNowhere() throws Exception {
		this.mvc.perform(get("/nowhere").accept(MediaType.TEXT_HTML))
			.andExpect(status().isNotFound())
			.andExpect(content().contentTypeCompatibleWith(MediaType.TEXT_HTML))
			.andExpect(content().string(containsString("There is nothing at this address")));
		this.mvc.perform(get("/api/v1/nowhere"))
			.andExpect(status().isNotFound())
			.andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
			.andExpect(jsonPath("$.detail").value("There is nothing at this address"));
	}

	@Test
	void whatFiltersRefuseIsAPageToo() throws Exception {
		this.mvc
			.perform(get("/error").accept(MediaType.TEXT_HTML)
				.requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 403)
				.requestAttr(RequestDispatcher.ERROR_MESSAGE, "secret"))
			.andExpect(status().isForbidden())
			.andExpect(content().string(containsString("This form is too old")))
			.andExpect(content().string(containsString("<main")))
			.andExpect(content().string(not(containsString("secret"))));
	}

	@Test
	void whoMaySeeAPageIsSaid() throws Exception {
		this.mvc
			.perform(get("/error").accept(MediaType.TEXT_HTML)
				.requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 403)
				.requestAttr(NotForYou.ATTRIBUTE, new NotForYou("Only the operator may see this", "sign in as one")))
			.andExpect(status().isForbidden())
			.andExpect(content().string(containsString("Only the operator may see this")))
			.andExpect(content().string(not(containsString("form"))));
	}

	@SpringBootConfiguration
	@EnableAutoConfiguration
	@Import({ ErrorAnswers.class, PageAttributes.class, UnhandledErrors.class, Troubled.class })
	static class Slice {

	}

	@Controller
	static class Troubled {

		@GetMapping("/bad")
		String bad() {
			throw new BadInput("count <b> is not a number", "count", "write a whole number");
		}

	}

}
