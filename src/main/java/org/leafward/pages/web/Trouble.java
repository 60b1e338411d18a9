package org.leafward.pages.web;

import java.sql.SQLException;

import org.jspecify.annotations.Nullable;

import org.springframework.beans.TypeMismatchException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.validation.FieldError;
import org.springframework.validation.method.ParameterValidationResult;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.MethodArgumentNotValidException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.method.annotation.HandlerMethodValidationException;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;

import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;

/**
 * What an exception means to the one who asked: a status and words, nothing of the
 * server's inside.
 *
 * @param status HTTP status
 * @param what what is wrong
 * @param where the field, line or file; null where there is none
 * @param mend what to do instead; null where nothing helps
 * @param headers headers that belong to the status, such as Allow
 */
record Trouble(HttpStatusCode status, String what, @Nullable String where, @Nullable String mend, HttpHeaders headers) {

	/** PostgreSQL's {@code disk_full} (PostgreSQL manual, appendix A). */
	private static final String DISK_FULL = "53100";

	static Trouble of(Exception ex) {
		if (ex instanceof BadInput bad) {
			return of(HttpStatus.BAD_REQUEST, bad.what(), bad.where(), bad.mend());
		}
		if (ex instanceof NotThere) {
			return of(HttpStatus.NOT_FOUND, String.valueOf(ex.getMessage()), null,
					"check the address; it may have been removed, or belong to somebody else");
		}
		if (diskFull(ex)) {
			return of(HttpStatus.INSUFFICIENT_STORAGE, "The server's disk is full, nothing was saved", null,
					"tell the operator; try again when there is room");
		}
		if (ex instanceof HttpMessageNotReadableException) {
			return of(HttpStatus.BAD_REQUEST, "The body can't be read", "body",
					"send a body of the documented shape and content type");
		}
		if (ex instanceof TypeMismatchException mismatch) {
			String where = (mismatch instanceof MethodArgumentTypeMismatchException argument) ? argument.getName()
					: mismatch.getPropertyName();
			return of(HttpStatus.BAD_REQUEST, "A value has the wrong form", where,
					"look the form up in the API's description");
		}
		if (ex instanceof ErrorResponse response) {
			return ofSpring(response);
		}
		return of(HttpStatus.INTERNAL_SERVER_ERROR, "Something went wrong here", null,
				"try again; if it stays, tell the operator what you did and when");
	}

	private static Trouble ofSpring(ErrorResponse response) {
		HttpStatus status = HttpStatus.resolve(response.getStatusCode().value());
		if (response instanceof MethodArgumentNotValidException invalid && invalid.getFieldError() != null) {
			FieldError field = invalid.getFieldError();
			return of(HttpStatus.BAD_REQUEST, field.getField() + " " + field.getDefaultMessage(), field.getField(),
					"look its bounds up in the API's description");
		}
		if (response instanceof HandlerMethodValidationException invalid && invalid.getStatusCode().is4xxClientError()
				&& !invalid.getParameterValidationResults().isEmpty()) {
			ParameterValidationResult result = invalid.getParameterValidationResults().get(0);
			String name = result.getMethodParameter().getParameterName();
			return of(HttpStatus.BAD_REQUEST, name + " " + result.getResolvableErrors().get(0).getDefaultMessage(),
					name, "look its bounds up in the API's description");
		}
		String where = (response instanceof MissingServletRequestParameterException missing)
				? missing.getParameterName() : null;
		Words words = Words.of(status, where != null);
		return new Trouble(response.getStatusCode(), words.what(), where, words.mend(), response.getHeaders());
	}

	private static Trouble of(HttpStatus status, String what, @Nullable String where, @Nullable String mend) {
		return new Trouble(status, what, where, mend, HttpHeaders.EMPTY);
	}

	private static boolean diskFull(Throwable ex) {
		Throwable cause = ex;
		// A chain of causes may run in a circle; no real one is this long.
		for (int depth = 0; cause != null && depth < 20; depth++) {
			if (cause instanceof SQLException sql && DISK_FULL.equals(sql.getSQLState())) {
				return true;
			}
			cause = cause.getCause();
		}
		return false;
	}

	private record Words(String what, @Nullable String mend) {

		static Words of(@Nullable HttpStatus status, boolean missing) {
			if (status == null) {
				return new Words("This can't be answered", null);
			}
			return switch (status) {
				case NOT_FOUND -> new Words("There is nothing at this address", "check the address");
				case METHOD_NOT_ALLOWED ->
					new Words("This address does not take that method", "use one that the Allow header names");
				case UNSUPPORTED_MEDIA_TYPE ->
					new Words("This content type can't be read", "use one that the Accept header names");
				case NOT_ACCEPTABLE -> new Words("This can't be given in the form asked for", "ask for another form");
				case CONTENT_TOO_LARGE -> new Words("This is too large", "send less at a time");
				case BAD_REQUEST -> missing ? new Words("A value is missing", "add it") : new Words(
						"A value is missing or outside its bounds", "look its bounds up in the API's description");
				case SERVICE_UNAVAILABLE -> new Words("The server is busy", "try again in a minute");
				default ->
					new Words(status.is5xxServerError() ? "Something went wrong here" : "This can't be answered", null);
			};
		}

	}

}
