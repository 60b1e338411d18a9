package org.leafward.platform.http;

import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.time.Duration;
import org.apache.hc.client5.http.config.ConnectionConfig;
import org.apache.hc.client5.http.config.RequestConfig;
import org.apache.hc.client5.http.config.TlsConfig;
import org.apache.hc.client5.http.impl.classic.CloseableHttpClient;
import org.apache.hc.client5.http.impl.classic.HttpClientBuilder;
import org.apache.hc.client5.http.impl.io.PoolingHttpClientConnectionManagerBuilder;
import org.apache.hc.core5.util.Timeout;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpRequest;
import org.springframework.http.client.ClientHttpRequestExecution;
import org.springframework.http.client.ClientHttpResponse;
import org.springframework.http.client.HttpComponentsClientHttpRequestFactory;
import org.springframework.web.client.RestClient;

/**
 * Calls addresses that people gave us. Servers in the public Internet only, by https; no
 * redirects, no cookies, no second try, no proxy, a time for the whole exchange, and the
 * first {@value #MOST_BYTES} octets of the answer.
 */
public final class StrangersHttp implements AutoCloseable {

	/** How much of an answer is read. */
	static final int MOST_BYTES = 4096;

	private static final int MOST_CONNECTIONS = 64;

	/** So that one slow server doesn't take all of them. */
	private static final int MOST_TO_ONE_SERVER = 4;

	private final HttpSettings settings;

	private final PublicNames names;

	private final ShortExchange exchange;

	private final CloseableHttpClient client;

	/**
	 * Opens the client that all builders share.
	 * @param settings its bounds
	 */
	public StrangersHttp(HttpSettings settings) {
		this(settings, InetAddress::getAllByName);
	}

	/**
	 * Opens the client with names of its own.
	 * @param settings its bounds
	 * @param lookup what knows the names
	 */
	StrangersHttp(HttpSettings settings, PublicNames.Lookup lookup) {
		this.settings = settings;
		this.names = new PublicNames(lookup, settings.connectTimeout(), settings.privateAddresses());
		this.exchange = new ShortExchange(settings.readTimeout(), MOST_BYTES);
		this.client = client(settings, this.names, this.exchange);
	}

	private static CloseableHttpClient client(HttpSettings settings, PublicNames names, ShortExchange exchange) {
		Timeout connect = timeout(settings.connectTimeout());
		Timeout read = timeout(settings.readTimeout());
		return HttpClientBuilder.create()
			.setConnectionManager(PoolingHttpClientConnectionManagerBuilder.create()
				.setDnsResolver(names)
				.setMaxConnTotal(MOST_CONNECTIONS)
				.setMaxConnPerRoute(MOST_TO_ONE_SERVER)
				.setDefaultConnectionConfig(
						ConnectionConfig.custom().setConnectTimeout(connect).setSocketTimeout(read).build())
				.setDefaultTlsConfig(TlsConfig.custom().setHandshakeTimeout(connect).build())
				.build())
			.setDefaultRequestConfig(
					RequestConfig.custom().setConnectionRequestTimeout(read).setResponseTimeout(read).build())
			.setConnectionReuseStrategy((request, response, context) -> false)
			.disableRedirectHandling()
			.disableAutomaticRetries()
			.disableContentCompression()
			.disableCookieManagement()
			.disableAuthCaching()
			.addExecInterceptorFirst("short", exchange)
			.build();
	}

	private static Timeout timeout(Duration duration) {
		return Timeout.ofMilliseconds(duration.toMillis());
	}

	/**
	 * A builder of clients.
	 * @return a new one, with nothing of what Spring lays on others
	 */
	public RestClient.Builder builder() {
		return RestClient.builder()
			.requestFactory(new HttpComponentsClientHttpRequestFactory(this.client))
			.defaultHeader(HttpHeaders.USER_AGENT, this.settings.userAgent())
			.requestInterceptor(this::guard);
	}

	private ClientHttpResponse guard(HttpRequest request, byte[] body, ClientHttpRequestExecution execution)
			throws IOException {
		URI place = request.getURI();
		OutgoingGuard.check(place, this.settings.plain());
		if (place.getRawUserInfo() != null) {
			throw new IOException("addresses with a name or password in them are not called");
		}
		return execution.execute(request, body);
	}

	@Override
	public void close() throws IOException {
		this.client.close();
		this.exchange.close();
		this.names.close();
	}

}
