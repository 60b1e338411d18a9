package org.leafward.reminders.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import org.leafward.reminders.channel.mail.Bounces;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;

/** What a mail server's pipe brings from the return address. */
@RestController
@Tag(name = "Reminders", description = "Messages to people and what comes of them")
class BouncesApi {

	private final Bounces bounces;

	BouncesApi(Bounces bounces) {
		this.bounces = bounces;
	}

	/**
	 * What the mail was.
	 *
	 * @param result suppressed, known, refused, passes, unknown or no-report
	 * @param words the same in words
	 */
	record BounceAnswer(String result, String words) {
	}

	/** Takes the mail as the raw body, whatever its content type says. */
	@Operation(
			summary = "Read a mail that came to the return address; a delivery report ends reminders to an address "
					+ "at which nobody is",
			requestBody = @io.swagger.v3.oas.annotations.parameters.RequestBody(required = true,
					description = "the mail as it came, headers first, at most 1 MB, whatever the content type says",
					content = @Content(mediaType = "message/rfc822",
							schema = @Schema(types = "string", format = "binary"))))
	@PostMapping(path = "/api/v1/reminders/bounces", produces = MediaType.APPLICATION_JSON_VALUE)
	BounceAnswer read(HttpServletRequest request) throws IOException {
		Bounces.Bounce bounce = this.bounces.read(request.getInputStream());
		return new BounceAnswer(bounce.code(), bounce.words());
	}

}
