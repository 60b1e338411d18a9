package org.leafward.pages.web;

import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

import org.springframework.context.annotation.Configuration;
import org.springframework.http.converter.HttpMessageConverters;
import org.springframework.http.converter.json.JacksonJsonHttpMessageConverter;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Refuses members that no request has, so that a misspelt one is not quietly left out.
 * Only for requests: stored events of another version must stay readable.
 */
@Configuration(proxyBeanMethods = false)
class StrictBodies implements WebMvcConfigurer {

	private final JsonMapper json;

	StrictBodies(JsonMapper json) {
		this.json = json;
	}

	@Override
	public void configureMessageConverters(HttpMessageConverters.ServerBuilder converters) {
		converters.withJsonConverter(new JacksonJsonHttpMessageConverter(
				this.json.rebuild().enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).build()));
	}

}
