package org.leafward.pages.web;

import java.util.List;

import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JacksonException.Reference;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

import org.springframework.http.HttpStatus;

/** Says where a JSON body is wrong, without the words of the library that read it. */
final class BodyTrouble {

	private static final int LONGEST_PLACE = 100;

	private BodyTrouble() {
	}

	static Trouble of(@Nullable JacksonException ex) {
		String member = (ex != null) ? member(ex.getPath()) : "";
		if (ex instanceof UnrecognizedPropertyException) {
			return bad("The body has a member that is not known here", member,
					"correct its name or leave it out; the API's description names them all");
		}
		if (!member.isEmpty()) {
			return bad("A member of the body has the wrong form", member, "look its form up in the API's description");
		}
		TokenStreamLocation at = (ex != null) ? ex.getLocation() : null;
		if (at != null && at.getLineNr() > 0) {
			return bad("The body is no JSON of the documented shape",
					"body, line %d, column %d".formatted(at.getLineNr(), at.getColumnNr()),
					"send one JSON object in UTF-8");
		}
		return bad("The body can't be read", "body", "send a body of the documented shape and content type");
	}

	private static Trouble bad(String what, String where, String mend) {
		return Trouble.of(HttpStatus.BAD_REQUEST, what, where, mend);
	}

	private static String member(List<Reference> path) {
		StringBuilder member = new StringBuilder();
		for (Reference step : path) {
			if (step.getPropertyName() != null) {
				member.append(member.isEmpty() ? "" : ".").append(step.getPropertyName());
			}
			else {
				member.append('[').append(step.getIndex()).append(']');
			}
		}
		return member.substring(0, Math.min(LONGEST_PLACE, member.length()));
	}

}
