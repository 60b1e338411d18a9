package org.leafward.pages.web;

import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.IntegerSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.ObjectSchema;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import org.springdoc.core.customizers.OperationCustomizer;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * What the API's description says of all addresses alike: what it is for, who may call
 * it, and how refusals look.
 */
@Configuration(proxyBeanMethods = false)
class ApiDescription {

	private static final String SCHEME = "token";

	private static final String PROBLEM = "Problem";

	@Bean
	OpenAPI openApi() {
		return new OpenAPI()
			.info(new Info().title("Leafward")
				.version("1")
				.description("Stations and their daily records, people, sites, plantings, and the care tasks "
						+ "that follow from them. Dates are year-month-day; a season is named by the year of its "
						+ "spring. Lists come in pages, counted from 0. Members that are not described here are "
						+ "refused. JSON bodies are at most 1 MiB, station files at most 64 MiB."))
			.addSecurityItem(new SecurityRequirement().addList(SCHEME))
			.components(new Components()
				.addSecuritySchemes(SCHEME,
						new SecurityScheme().type(SecurityScheme.Type.HTTP)
							.scheme("bearer")
							.description("A personal token, made under My account, Tokens, or the value of "
									+ "LEAFWARD_OPERATOR_TOKEN (RFC 6750). Reading needs the scope read, changing "
									+ "write, rule packs rules; what is others' is not there."))
				.addSchemas(PROBLEM, problem()));
	}

	private static Schema<?> problem() {
		return new ObjectSchema().description("Why a request was refused (RFC 9457).")
			.addProperty("title", new StringSchema().description("name of the status"))
			.addProperty("status", new IntegerSchema().description("HTTP status"))
			.addProperty("detail", new StringSchema().description("what is wrong"))
			.addProperty("instance", new StringSchema().format("uri-reference").description("the address asked for"))
			.addProperty("where", new StringSchema().description("the member, parameter, header or line"))
			.addProperty("mend", new StringSchema().description("what to do instead"));
	}

	@Bean
	OperationCustomizer refusals() {
		return (operation, method) -> {
			refuse(operation, "400", "A value is missing or wrong.");
			refuse(operation, "401", "The operator token is missing or wrong.");
			if (operation.getParameters() != null
					&& operation.getParameters().stream().anyMatch((one) -> "path".equals(one.getIn()))) {
				refuse(operation, "404", "There is no such thing.");
			}
			if (operation.getRequestBody() != null) {
				refuse(operation, "413", "The body is too large; nothing was saved.");
				refuse(operation, "507", "The server's disk is full; nothing was saved.");
			}
			refuse(operation, "503", "The server is busy; try again after the time in Retry-After.");
			return operation;
		};
	}

	private static void refuse(Operation operation, String status, String words) {
		operation.getResponses()
			.addApiResponse(status,
					new ApiResponse().description(words)
						.content(new Content().addMediaType("application/problem+json",
								new MediaType().schema(new Schema<>().$ref("#/components/schemas/" + PROBLEM)))));
	}

}
