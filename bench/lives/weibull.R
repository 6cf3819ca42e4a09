# Weibull of lives seen to end or still good, by survival's survreg; reads "age ended" lines, prints milliseconds and fit as JSON.
suppressMessages(library(survival))
lives <- read.table(file("stdin"), col.names = c("age", "ended"))
best <- Inf
for (i in 1:5) {
  begun <- proc.time()[["elapsed"]]
  for (j in 1:20) fit <- survreg(Surv(age, ended) ~ 1, data = lives, dist = "weibull")
  best <- min(best, (proc.time()[["elapsed"]] - begun) / 20)
}
cat(sprintf('{"millis": %.4f, "shape": %.9f, "scale": %.9f, "version": "R survival %s"}',
            best * 1000, 1 / fit$scale, exp(fit$coefficients[[1]]), packageVersion("survival")))
