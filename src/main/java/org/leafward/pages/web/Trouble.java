package org.leafward.pages.web;

import java.sql.SQLException;
import java.sql.SQLTransientException;

import org.apache.tomcat.util.http.InvalidParameterException;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;

import org.springframework.beans.TypeMismatchException;
import org.springframework.dao.TransientDataAccessException;
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
import org.springframework.web.multipart.MultipartException;
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
		BodyTooLarge large = cause(ex, BodyTooLarge.class);
		if (large != null) {
			return of(HttpStatus.CONTENT_TOO_LARGE, "The body is larger than %d bytes".formatted(large.most()), "body",
					"send less at a time; nothing was saved");
		}
		if (ex instanceof HttpMessageNotReadableException) {
			return BodyTrouble.of(cause(ex, JacksonException.class));
		}
		if (ex instanceof InvalidParameterException invalid) {
			return (HttpStatus.resolve(invalid.getErrorCode()) == HttpStatus.CONTENT_TOO_LARGE)
					? of(HttpStatus.CONTENT_TOO_LARGE, "This form or file is too large", "form",
							"choose a file of at most 8 MB; phones can send a photo smaller; nothing was saved")
					: of(HttpStatus.BAD_REQUEST, "The query or form can't be read", "query",
							"percent-encode it as UTF-8 and send less than 1 MB");
		}
		if (ex instanceof MultipartException && !(ex instanceof ErrorResponse)) {
			return of(HttpStatus.BAD_REQUEST, "There is no file in this form", "file",
					"choose a file and send it anew");
		}
		if (busy(ex)) {
			HttpHeaders later = new HttpHeaders();
			later.set(HttpHeaders.RETRY_AFTER, "30");
			Words words = Words.of(HttpStatus.SERVICE_UNAVAILABLE, false);
			return new Trouble(HttpStatus.SERVICE_UNAVAILABLE, words.what(), null, words.mend(), later);
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
		return new Trouble(response.getStatusCode(), words.what(), (where != null) ? where : place(status),
				words.mend(), response.getHeaders());
	}

	/** What a status means when no exception says more. */
	static Trouble of(HttpStatus status) {
		if (status == HttpStatus.BAD_REQUEST) {
			return of(status, "This request can't be read", "address",
					"write the address plainly, without ';', '//', '..' or encoded slashes, and keep it short");
		}
		Words words = Words.of(status, false);
		return of(status, words.what(), place(status), words.mend());
	}

	private static @Nullable String place(@Nullable HttpStatus status) {
		if (status == null) {
			return null;
		}
		return switch (status) {
			case METHOD_NOT_ALLOWED, NOT_IMPLEMENTED -> "method";
			case UNSUPPORTED_MEDIA_TYPE -> "header Content-Type";
			case NOT_ACCEPTABLE -> "header Accept";
			case NOT_FOUND -> "address";
			case CONTENT_TOO_LARGE -> "body";
			case FORBIDDEN -> "form";
			default -> null;
		};
	}

	static Trouble of(HttpStatus status, String what, @Nullable String where, @Nullable String mend) {
		return new Trouble(status, what, where, mend, HttpHeaders.EMPTY);
	}

	private static boolean diskFull(Throwable ex) {
		SQLException sql = cause(ex, SQLException.class);
		return sql != null && DISK_FULL.equals(sql.getSQLState());
	}

	/** No connection, or no turn, within the time; the same works a little later. */
	private static boolean busy(Throwable ex) {
		SQLException sql = cause(ex, SQLException.class);
		return ex instanceof TransientDataAccessException || sql instanceof SQLTransientException
				|| (sql != null && sql.getSQLState() != null && sql.getSQLState().startsWith("08"));
	}

	private static <T extends Throwable> @Nullable T cause(Throwable ex, Class<T> type) {
		Throwable cause = ex;
		// A chain of causes may run in a circle; no real one is this long.
		for (int depth = 0; cause != null && depth < 20; depth++) {
			if (type.isInstance(cause)) {
				return type.cast(cause);
			}
			cause = cause.getCause();
		}
		return null;
	}

	private record Words(String what, @Nullable String mend) {

		static Words of(@Nullable HttpStatus status, boolean missing) {
			if (status == null) {
				return new Words("This can't be answered", null);
			}
			return switch (status) {
				case FORBIDDEN -> new Words("This form is too old, or it was not sent from here",
						"open the page again and send the form once more");
				case NOT_FOUND -> new Words("There is nothing at this address", "check the address");
				case METHOD_NOT_ALLOWED ->
					new Words("This address does not take that method", "use one that the Allow header names");
				case UNSUPPORTED_MEDIA_TYPE ->
					new Words("This content type can't be read", "use one that the Accept header names");
				case NOT_ACCEPTABLE -> new Words("This can't be given in the form asked for", "ask for another form");
				case CONTENT_TOO_LARGE -> new Words("This is too large", "send less at a time");
				case BAD_REQUEST -> missing ? new Words("A value is missing", "add it") : new Words(
						"A value is missing or outside its bounds", "look its bounds up in the API's description");
				case TOO_MANY_REQUESTS -> new Words("That was too often in a short time",
						"wait as long as the header Retry-After says, some minutes at most, and try again");
				case SERVICE_UNAVAILABLE -> new Words("The server is busy", "try again in a minute");
				default ->
					new Words(status.is5xxServerError() ? "Something went wrong here" : "This can't be answered", null);
			};
		}

	}

}
