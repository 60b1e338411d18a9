package org.leafward.platform.http;

import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Scope;
import org.springframework.web.client.RestClient;

/** Lays the bounds on Boot's builder of HTTP clients, and gives one for strangers. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(HttpSettings.class)
class OutgoingHttpConfiguration {

	@Bean
	OutgoingHttp outgoingHttp(HttpSettings settings) {
		return new OutgoingHttp(settings);
	}

	@Bean
	StrangersHttp strangersHttp(HttpSettings settings) {
		return new StrangersHttp(settings);
	}

	/** For addresses that people gave us; asked for by its qualifier only. */
	@Bean(defaultCandidate = false)
	@Qualifier("strangers")
	@Scope("prototype")
	RestClient.Builder strangersRestClientBuilder(StrangersHttp strangers) {
		return strangers.builder();
	}

}
