package org.leafward.platform.http;

import java.io.IOException;
import java.net.URI;
import java.time.Duration;
import java.util.Set;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpRequest;
import org.springframework.http.client.ClientHttpRequestExecution;
import org.springframework.http.client.ClientHttpRequestInterceptor;
import org.springframework.http.client.ClientHttpResponse;
import org.springframework.http.client.support.HttpRequestWrapper;

/**
 * Refuses addresses that aren't https, follows few redirects and none to another scheme,
 * and reads only so much. What it refuses is said in words that can be shown.
 */
final class OutgoingGuard implements ClientHttpRequestInterceptor {

	private static final int MOST_REDIRECTS = 5;

	/** RFC 9110, section 15.4; 300 and 304 name no place to go on to. */
	private static final Set<Integer> REDIRECTS = Set.of(301, 302, 303, 307, 308);

	private final long mostBytes;

	private final Duration readTimeout;

	private final boolean plain;

	OutgoingGuard(HttpSettings settings) {
		this.mostBytes = settings.maxBody().toBytes();
		this.readTimeout = settings.readTimeout();
		this.plain = settings.plain();
	}

	@Override
	public ClientHttpResponse intercept(HttpRequest request, byte[] body, ClientHttpRequestExecution execution)
			throws IOException {
		URI place = request.getURI();
		check(place, this.plain);
		Stopwatch watch = new Stopwatch(this.readTimeout);
		ClientHttpResponse response = watch.read(() -> execution.execute(request, body));
		for (int hops = 0; redirects(request, response); hops++) {
			String location = response.getHeaders().getFirst(HttpHeaders.LOCATION);
			response.close();
			if (hops == MOST_REDIRECTS) {
				throw new IOException("it redirects more than %d times".formatted(MOST_REDIRECTS));
			}
			place = next(place, String.valueOf(location));
			HttpRequest elsewhere = new Elsewhere(request, place);
			watch = new Stopwatch(this.readTimeout);
			response = watch.read(() -> execution.execute(elsewhere, body));
		}
		return CappedResponse.of(response, this.mostBytes, watch);
	}

	private static boolean redirects(HttpRequest request, ClientHttpResponse response) throws IOException {
		return HttpMethod.GET.equals(request.getMethod()) && REDIRECTS.contains(response.getStatusCode().value())
				&& response.getHeaders().getFirst(HttpHeaders.LOCATION) != null;
	}

	private URI next(URI from, String location) throws IOException {
		URI to;
		try {
			to = from.resolve(location);
		}
		catch (IllegalArgumentException ex) {
			throw new IOException("it redirects to an address that can't be read", ex);
		}
		if (!String.valueOf(from.getScheme()).equalsIgnoreCase(to.getScheme())) {
			throw new IOException(
					"it redirects from %s to %s, which is not followed".formatted(from.getScheme(), to.getScheme()));
		}
		check(to, this.plain);
		return to;
	}

	/**
	 * Checks that an address may be called.
	 * @param place the address
	 * @param plain whether http is allowed beside https
	 * @throws IOException if it is of another scheme, or names no server
	 */
	static void check(URI place, boolean plain) throws IOException {
		String scheme = String.valueOf(place.getScheme());
		boolean allowed = scheme.equalsIgnoreCase("https") || (plain && scheme.equalsIgnoreCase("http"));
		if (!allowed || place.getHost() == null) {
			throw new IOException("only https addresses are called (leafward.http.plain allows http too)");
		}
	}

	private static final class Elsewhere extends HttpRequestWrapper {

		private final URI place;

		Elsewhere(HttpRequest request, URI place) {
			super(request);
			this.place = place;
		}

		@Override
		public URI getURI() {
			return this.place;
		}

	}

}
