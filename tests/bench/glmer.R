# Times lme4::glmer (nAGQ = 1, its defaults) on a file of tokens: Rscript glmer.R tokens.csv
suppressMessages(library(lme4))
d <- read.csv(commandArgs(TRUE)[1], stringsAsFactors = TRUE)
seconds <- system.time(fit <- suppressWarnings(suppressMessages(
  glmer(devoiced ~ vowel + c1 + accented + rate + (1 | speaker) + (1 | word), d, binomial, nAGQ = 1))))
cat(sprintf("{\"clock\": %.3f, \"processor\": %.3f, \"logLikelihood\": %.6f, \"version\": \"%s\"}\n", seconds[["elapsed"]], seconds[["user.self"]], as.numeric(logLik(fit)), packageVersion("lme4")))
