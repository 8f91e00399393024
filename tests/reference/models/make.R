# Makes the data and the expected values of this folder's checks: `Rscript make.R` inside this folder.
# The data are invented (seeded draws); they look like devoicing tokens so that the checks read naturally.
suppressMessages({library(lme4); library(sandwich); library(clubSandwich); library(brglm2); library(jsonlite)})
RNGkind("Mersenne-Twister", "Inversion", "Rejection")

draw <- function(seed, speakers, words, tokens, sdSpeaker, sdWord, intercept) {
  set.seed(seed)
  vowel <- sample(c("i", "u"), words, TRUE)
  c1 <- sample(c("h", "k", "s", "t"), words, TRUE, c(.2, .35, .3, .15))
  accented <- sample(c("false", "true"), words, TRUE, c(.7, .3))
  bSpeaker <- rnorm(speakers, 0, sdSpeaker); bWord <- rnorm(words, 0, sdWord)
  dSpeaker <- rnorm(speakers, 0, .15); dWord <- rnorm(words, 0, .12)
  s <- sample(speakers, tokens, TRUE, seq(1, 2, length.out = speakers))
  w <- sample(words, tokens, TRUE, 1 / seq_len(words)^.5)
  rate <- round(rnorm(tokens, 7, 1.2), 2)
  eta <- intercept + .5 * (vowel[w] == "u") + c(h = .4, k = 0, s = .8, t = -.5)[c1[w]] -
    .9 * (accented[w] == "true") + .3 * (rate - 7) + bSpeaker[s] + bWord[w]
  devoiced <- rbinom(tokens, 1, plogis(eta))
  logMs <- round(4.2 + .05 * (vowel[w] == "i") - .06 * (rate - 7) + dSpeaker[s] + dWord[w] + rnorm(tokens, 0, .3), 4)
  data.frame(speaker = sprintf("s%02d", s), word = sprintf("w%03d", w), vowel = vowel[w], c1 = c1[w],
             accented = accented[w], rate = rate, devoiced = devoiced, logMs = logMs)
}

sets <- list(
  fewSpeakers = draw(101, 6, 40, 900, .7, .5, -.3),
  manySpeakers = draw(102, 60, 120, 2400, .9, .4, .2),
  rareOutcome = draw(103, 30, 100, 3000, .6, .6, -4),
  crossed = draw(104, 25, 200, 4000, .8, 1.2, 0),
  separated = draw(105, 12, 60, 1200, .6, .5, -.2))
sets$separated$devoiced[sets$separated$c1 == "t"] <- 0

named <- function(x) as.list(signif(x, 12))
# `sd`: spread of the intercepts that rates are averaged over (trapezoid rule); 0 for none.
marginalEffects <- function(fit, vcov, data, b0 = coef(fit), sd = 0) {
  z <- if (sd > 0) seq(-8, 8, length.out = 81) else 0
  share <- dnorm(z) / sum(dnorm(z))
  mean_over <- function(f, eta) drop(vapply(z, function(one) f(eta + sd * one), eta) %*% share)
  predictor <- function(b, d) drop(model.matrix(delete.response(terms(fit)), d, xlev = fit$xlevels) %*% b)
  rates <- function(b, d) mean_over(plogis, predictor(b, d))
  effect <- function(f) {
    b <- b0; g <- numDeriv::grad(f, b)
    list(percentagePoints = 100 * f(b), standardError = 100 * sqrt(drop(g %*% vcov %*% g)))
  }
  set <- function(column, level) { d <- data; d[[column]] <- level; d }
  out <- list()
  pairs <- c(list(c("vowel", "u", "i"), c("accented", "true", "false")), lapply(setdiff(fit$xlevels$c1, "k"), function(l) c("c1", l, "k")))
  for (pair in pairs) {
    hi <- set(pair[1], pair[2]); lo <- set(pair[1], pair[3])
    out[[paste0(pair[1], "=", pair[2])]] <- effect(function(b) mean(rates(b, hi) - rates(b, lo)))
  }
  out[["rate"]] <- effect(function(b) mean(mean_over(dlogis, predictor(b, data))) * b[["rate"]])
  out
}
model <- function(fit, vcov) list(coefficients = named(coef(fit)), standardErrors = named(sqrt(diag(vcov))))

logistic <- function(d) {
  fit <- glm(devoiced ~ vowel + c1 + accented + rate, binomial, d, epsilon = 1e-14, maxit = 100)
  hc0 <- vcovCL(fit, ~speaker, type = "HC0"); hc1 <- vcovCL(fit, ~speaker, type = "HC1")
  raw <- vcovCL(fit, ~speaker, type = "HC0", cadjust = FALSE)
  cr2 <- vcovCR(fit, d$speaker, type = "CR2"); test <- coef_test(fit, cr2, test = "Satterthwaite")
  both <- vcovCL(fit, ~ speaker + word, type = "HC0", fix = TRUE)
  # The same correction with the symmetric root in whitened coordinates, which does not depend on how tokens are grouped:
  # ordinary least squares on rows times the root of their working weight.
  root <- sqrt(weights(fit, "working")); X <- model.matrix(fit) * root
  z <- (predict(fit) + residuals(fit, "working")) * root
  white <- lm(z ~ 0 + X); whiteCr2 <- vcovCR(white, d$speaker, type = "CR2")
  whiteTest <- coef_test(white, whiteCr2, test = "Satterthwaite")
  list(coefficients = named(coef(fit)), logLikelihood = as.numeric(logLik(fit)),
       standardErrors = list(model = named(sqrt(diag(vcov(fit)))), CR0 = named(sqrt(diag(raw))), CR1 = named(sqrt(diag(hc0))),
                             CR1S = named(sqrt(diag(hc1))), twoWay = named(sqrt(diag(both))), CR2OfGlm = named(setNames(sqrt(diag(cr2)), names(coef(fit)))),
                             CR2 = named(setNames(sqrt(diag(whiteCr2)), names(coef(fit))))),
       satterthwaiteDf = named(setNames(whiteTest$df, names(coef(fit)))),
       marginalEffects = marginalEffects(fit, hc1, d))
}
linear <- function(d) {
  fit <- lm(logMs ~ vowel + c1 + accented + rate, d)
  cr2 <- vcovCR(fit, d$speaker, type = "CR2"); test <- coef_test(fit, cr2, test = "Satterthwaite")
  list(coefficients = named(coef(fit)), residualSd = sigma(fit), rSquared = summary(fit)$r.squared,
       standardErrors = list(model = named(sqrt(diag(vcov(fit)))), CR1S = named(sqrt(diag(vcovCL(fit, ~speaker, type = "HC1")))),
                             CR2 = named(setNames(sqrt(diag(cr2)), names(coef(fit))))),
       satterthwaiteDf = named(setNames(if (is.null(test$df)) test$df_Satt else test$df, names(coef(fit)))))
}
fixed <- function(fit) list(coefficients = named(fixef(fit)), standardErrors = named(sqrt(diag(as.matrix(vcov(fit))))),
                            variances = lapply(VarCorr(fit), function(v) v[1, 1]), logLikelihood = as.numeric(logLik(fit)))
tight <- glmerControl(optimizer = "bobyqa", optCtrl = list(maxfun = 1e5, rhoend = 1e-9), tolPwrss = 1e-12, check.conv.grad = "ignore")
mixedLogistic <- function(d) list(
  crossedLaplace = fixed(glmer(devoiced ~ vowel + c1 + accented + rate + (1 | speaker) + (1 | word), d, binomial, nAGQ = 1, control = tight)),
  speakerQuadrature10 = fixed(glmer(devoiced ~ vowel + c1 + accented + rate + (1 | speaker), d, binomial, nAGQ = 10, control = tight)),
  speakerLaplace = fixed(glmer(devoiced ~ vowel + c1 + accented + rate + (1 | speaker), d, binomial, nAGQ = 1, control = tight)))
tightLinear <- lmerControl(optimizer = "bobyqa", optCtrl = list(maxfun = 1e5, rhoend = 1e-10), check.conv.singular = "ignore")
mixedLinear <- function(d) {
  run <- function(reml) {
    fit <- lmer(logMs ~ vowel + c1 + accented + rate + (1 | speaker) + (1 | word), d, REML = reml, control = tightLinear)
    c(fixed(fit), residualVariance = sigma(fit)^2)
  }
  list(ml = run(FALSE), reml = run(TRUE))
}

for (name in names(sets)) {
  d <- sets[[name]]
  write.csv(d, file.path("fixtures", paste0(name, ".csv")), row.names = FALSE, quote = FALSE)
  d$c1 <- relevel(factor(d$c1), "k"); d$vowel <- factor(d$vowel); d$accented <- factor(d$accented)
  out <- if (name == "separated") {
    firth <- glm(devoiced ~ vowel + c1 + accented + rate, binomial, d, method = "brglmFit", type = "AS_mean", epsilon = 1e-12, maxit = 1000)
    list(firth = model(firth, vcov(firth)), logistic = logistic(droplevels(subset(d, c1 != "t"))), linear = linear(d), mixedLinear = mixedLinear(d))
  } else if (name == "fewSpeakers") {
    mixed <- glmer(devoiced ~ vowel + c1 + accented + rate + (1 | speaker) + (1 | word), d, binomial, nAGQ = 1, control = tight)
    simple <- glm(devoiced ~ vowel + c1 + accented + rate, binomial, d)
    averaged <- marginalEffects(simple, as.matrix(vcov(mixed)), d, fixef(mixed), sqrt(sum(unlist(VarCorr(mixed)))))
    list(logistic = logistic(d), linear = linear(d), mixedLogistic = mixedLogistic(d), mixedLinear = mixedLinear(d),
         mixedMarginalEffects = averaged)
  } else list(logistic = logistic(d), linear = linear(d), mixedLogistic = mixedLogistic(d), mixedLinear = mixedLinear(d))
  writeLines(toJSON(out, auto_unbox = TRUE, digits = 12, pretty = TRUE), file.path("fixtures", paste0(name, ".json")))
  cat(name, "done\n")
}
packages <- c("lme4", "Matrix", "sandwich", "clubSandwich", "brglm2", "numDeriv", "jsonlite")
writeLines(toJSON(list(R = paste(R.version$major, R.version$minor, sep = "."),
  packages = lapply(setNames(packages, packages), function(p) as.character(packageVersion(p)))), auto_unbox = TRUE, pretty = TRUE),
  "fixtures/versions.json")
