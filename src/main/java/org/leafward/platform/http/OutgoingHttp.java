package org.leafward.platform.http;

import java.net.http.HttpClient;
import org.springframework.boot.restclient.RestClientCustomizer;
import org.springframework.http.HttpHeaders;
import org.springframework.http.client.JdkClientHttpRequestFactory;
import org.springframework.web.client.RestClient;

/**
 * Makes every {@code RestClient.Builder} one that waits, reads and follows only so far.
 */
public final class OutgoingHttp implements RestClientCustomizer {

	private final HttpSettings settings;

	private final JdkClientHttpRequestFactory factory;

	/**
	 * Opens the client that all builders share.
	 * @param settings its bounds
	 */
	public OutgoingHttp(HttpSettings settings) {
		this.settings = settings;
		HttpClient client = HttpClient.newBuilder()
			.connectTimeout(settings.connectTimeout())
			// OutgoingGuard follows, since this client would also follow from http to
			// https.
			.followRedirects(HttpClient.Redirect.NEVER)
			.build();
		this.factory = new JdkClientHttpRequestFactory(client);
		this.factory.setReadTimeout(settings.readTimeout());
	}

	@Override
	public void customize(RestClient.Builder builder) {
		builder.requestFactory(this.factory)
			.defaultHeader(HttpHeaders.USER_AGENT, this.settings.userAgent())
			.requestInterceptor(new OutgoingGuard(this.settings));
	}

}
