package org.leafward.pages.web;

import java.util.Collections;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockServletContext;
import org.springframework.stereotype.Controller;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.context.support.StaticWebApplicationContext;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerExecutionChain;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.ServletRequestPathUtils;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** The framework's own mapping tells what is right: ours finds the same for all. */
class FirstSegmentsTests {

	private final FirstSegments.Mapping ours = new FirstSegments.Mapping();

	private final RequestMappingHandlerMapping usual = new RequestMappingHandlerMapping();

	@Controller
	static class Pages {

		@GetMapping("/sites/{id}")
		void site(@PathVariable String id) {
		}

		@GetMapping("/sites/new")
		void form() {
		}

		@PostMapping("/sites/{id}/beds")
		void bed(@PathVariable String id) {
		}

		@GetMapping("/beds/{id}/year")
		void year(@PathVariable String id) {
		}

		@GetMapping({ "/one/{x}", "/other/{x}" })
		void either(@PathVariable String x) {
		}

		@GetMapping("/{any}/of/{x}")
		void open(@PathVariable String any, @PathVariable String x) {
		}

		@GetMapping({ "", "/" })
		void start() {
		}

	}

	@BeforeEach
	void register() {
		StaticWebApplicationContext context = new StaticWebApplicationContext();
		context.setServletContext(new MockServletContext());
		context.registerSingleton("pages", Pages.class);
		context.refresh();
		for (RequestMappingHandlerMapping mapping : Set.of(this.ours, this.usual)) {
			mapping.setApplicationContext(context);
			mapping.afterPropertiesSet();
		}
	}

	@ParameterizedTest
	@CsvSource({ "/sites/7, site", "/sites/new, form", "/s%69tes/7, site", "/sites;a=b/7, site", "/one/7, either",
			"/other/7, either", "/beds/7/year, year", "/beds/of/year, year", "/beds/of/x, open", "/what/of/it, open",
			"/sites/of/it, open", "/, start", "/site/7,", "/sites,", "/Sites/7,", "/sites/7/beds/9,", "//sites/7," })
	void findsWhatTheFrameworkFinds(String path, String method) throws Exception {
		for (String context : Set.of("", "/garden")) {
			assertThat(found(this.ours, "GET", context, path)).as(context + path).isEqualTo(method);
			assertThat(found(this.usual, "GET", context, path)).as(context + path).isEqualTo(method);
		}
	}

	/** What handlers and their arguments read from the request. */
	@Test
	void leavesTheSameInTheRequest() throws Exception {
		Set<Map<String, Object>> left = new HashSet<>();
		for (RequestMappingHandlerMapping mapping : Set.of(this.ours, this.usual)) {
			MockHttpServletRequest request = request("GET", "/garden", "/beds/7/year");
			mapping.getHandler(request);
			Map<String, Object> attributes = new TreeMap<>();
			for (String name : Collections.list(request.getAttributeNames())) {
				attributes.put(name, String.valueOf(request.getAttribute(name)));
			}
			assertThat(attributes).containsKeys(HandlerMapping.BEST_MATCHING_PATTERN_ATTRIBUTE,
					HandlerMapping.BEST_MATCHING_HANDLER_ATTRIBUTE, HandlerMapping.URI_TEMPLATE_VARIABLES_ATTRIBUTE);
			left.add(attributes);
		}
		assertThat(left).hasSize(1);
	}

	/** RFC 9110, section 15.5.6: what is there for another method is told. */
	@Test
	void anotherMethodIsToldAsBefore() {
		assertThatExceptionOfType(HttpRequestMethodNotSupportedException.class)
			.isThrownBy(() -> found(this.ours, "GET", "", "/sites/7/beds"))
			.satisfies((ex) -> assertThat(ex.getSupportedMethods()).containsExactly("POST"));
	}

	private static String found(RequestMappingHandlerMapping mapping, String method, String context, String path)
			throws Exception {
		HandlerExecutionChain chain = mapping.getHandler(request(method, context, path));
		return (chain != null) ? ((HandlerMethod) chain.getHandler()).getMethod().getName() : null;
	}

	private static MockHttpServletRequest request(String method, String context, String path) {
		MockHttpServletRequest request = new MockHttpServletRequest(method, context + path);
		request.setContextPath(context);
		ServletRequestPathUtils.parseAndCache(request);
		return request;
	}

}
