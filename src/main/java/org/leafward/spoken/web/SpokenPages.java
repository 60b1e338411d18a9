package org.leafward.spoken.web;

import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.thymeleaf.spring6.view.ThymeleafViewResolver;

/** Has all pages made by {@link SpokenView}. */
@Configuration(proxyBeanMethods = false)
class SpokenPages {

	@Bean
	static BeanPostProcessor spokenViews() {
		return new BeanPostProcessor() {
			@Override
			public Object postProcessBeforeInitialization(Object bean, String name) {
				if (bean instanceof ThymeleafViewResolver resolver) {
					resolver.setViewClass(SpokenView.class);
				}
				return bean;
			}
		};
	}

}
