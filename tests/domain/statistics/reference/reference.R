# Writes r-reference.json: what R computes for the statistics of src/domain/statistics, for random cases and edges.
#
# Re-run by hand, from the project's folder, with Debian's r-base-core and r-cran-survival:
#
#     Rscript tests/domain/statistics/reference/reference.R
#
# Last run with R 4.2.2 and survival 3.5-3 (both are written into the file). The seed is fixed: the same versions give
# the same file. One case a line; numbers have 17 digits, so that none is rounded.
suppressMessages(library(survival))
set.seed(20260105)

number <- function(x) ifelse(is.finite(x), trimws(formatC(x, digits = 17, format = "g")), "null")
row <- function(...) paste0("[", paste(unlist(lapply(list(...), function(each) {
  if (length(each) == 1) number(each) else paste0("[", paste(number(each), collapse = ","), "]")
})), collapse = ","), "]")
list_of <- function(x) paste0("[", paste(number(x), collapse = ","), "]")
sizes <- function(count) round(10^runif(count, 0, 6))

beta_cases <- local({
  shape <- function() sample(c(0.5, 1, round(10^runif(1, 0, 6)), 10^runif(1, -1, 5)), 1)
  sapply(1:250, function(i) {
    a <- shape(); b <- shape()
    p <- sample(c(0.025, 0.05, 0.5, 0.95, 0.975, runif(1), 1e-6), 1)
    x <- qbeta(p, a, b)
    while (x < 1e-290 || x > 1 - 1e-9) { a <- shape(); b <- shape(); x <- qbeta(p, a, b) }
    row(x, a, b, pbeta(x, a, b), pbeta(x, a, b, lower.tail = FALSE))
  })
})

quantile_cases <- local({
  sapply(1:250, function(i) {
    n <- sizes(1)
    k <- sample(c(0, n, floor(runif(1) * (n + 1)), rbinom(1, n, 0.05)), 1)
    p <- sample(c(0.025, 0.05, 0.5, 0.95, 0.975, runif(1)), 1)
    row(p, k + 0.5, n - k + 0.5, qbeta(p, k + 0.5, n - k + 0.5))
  })
})

normal_cases <- sapply(1:250, function(i) {
  p <- if (i %% 2) runif(1) else 10^runif(1, -15, -1)
  z <- runif(1, -10, 6)
  row(p, qnorm(p), z, pnorm(z))
})

student_cases <- sapply(1:250, function(i) {
  freedom <- sample(c(1, 2, 3, round(10^runif(1, 0, 4))), 1)
  p <- sample(c(0.025, 0.05, 0.95, 0.975, runif(1)), 1)
  row(p, freedom, qt(p, freedom))
})

binomial_cases <- sapply(1:250, function(i) {
  n <- sizes(1); p <- runif(1)^2
  k <- sample(c(0, n - 1, rbinom(3, n, p)), 1)
  row(k, n, p, pbinom(k, n, p), pbinom(k - 1, n, p, lower.tail = FALSE))
})

clopper_cases <- sapply(1:250, function(i) {
  n <- c(1, 2, 10, 1e6)[i %% 25 + 1]
  if (is.na(n)) n <- sizes(1)
  k <- switch(i %% 4 + 1, 0, n, floor(runif(1) * (n + 1)), rbinom(1, n, 0.05))
  level <- sample(c(0.8, 0.9, 0.95, 0.99), 1)
  found <- binom.test(k, n, conf.level = level)$conf.int
  row(k, n, level, found[1], found[2])
})

fisher_cases <- sapply(1:260, function(i) {
  top <- c(5, 30, 300, 1e5)[i %% 4 + 1]
  a <- max(1, round(runif(1) * top)); b <- max(1, round(runif(1) * top))
  p <- runif(1)^2
  # Not so far apart that the chance fades to nothing: what is left of it there is rounding in R too.
  q <- min(1, max(0, p + rnorm(1) * 2 * sqrt(p * (1 - p) * (1 / a + 1 / b))))
  x <- if (i %% 10 == 0) 0 else rbinom(1, a, p)
  y <- if (i %% 15 == 0) b else rbinom(1, b, q)
  table <- matrix(c(x, a - x, y, b - y), 2, byrow = TRUE)
  chance <- function(way) fisher.test(table, alternative = way, conf.int = FALSE)$p.value
  row(x, a, y, b, chance("two.sided"), chance("less"), chance("greater"))
})

# A chain of stages as a life table: a piece that is lost at stage j dies at time j, one that is still in flight after
# stage j is censored at time j (which counts as after the deaths of that time).
survival_cases <- sapply(1:220, function(i) {
  stages <- sample(1:14, 1); pieces <- sample(c(1, 5, 40, 300), 1)
  loss <- if (i %% 10 == 0) 0 else runif(1, 0, 0.3)
  stop <- if (i %% 7 == 0) 0 else runif(1, 0, 0.2)
  time <- integer(0); dead <- integer(0); left <- pieces
  at_risk <- integer(0); lost <- integer(0)
  for (stage in seq_len(stages)) {
    if (left == 0) break
    dying <- rbinom(1, left, loss); leaving <- rbinom(1, left - dying, stop)
    if (stage == stages) leaving <- left - dying
    at_risk <- c(at_risk, left); lost <- c(lost, dying)
    time <- c(time, rep(stage, dying + leaving)); dead <- c(dead, rep(1, dying), rep(0, leaving))
    left <- left - dying - leaving
  }
  level <- sample(c(0.8, 0.9, 0.95), 1)
  fit <- function(kind) summary(
    survfit(Surv(time, dead) ~ 1, conf.type = kind, conf.int = level), times = seq_along(at_risk), extend = TRUE)
  plain <- fit("plain"); loglog <- fit("log-log")
  paste0("[", paste(
    list_of(at_risk), list_of(lost), number(level), list_of(plain$surv), list_of(plain$std.err),
    list_of(plain$lower), list_of(plain$upper), list_of(loglog$lower), list_of(loglog$upper), sep = ","), "]")
})

block <- function(name, columns, cases)
  paste0("  \"", name, "\": {\n    \"columns\": \"", columns, "\",\n    \"cases\": [\n      ",
    paste(cases, collapse = ",\n      "), "\n    ]\n  }")

writeLines(c("{",
  paste0("  \"made\": \"", R.version.string, ", survival ", packageVersion("survival"), ", seed 20260105\","),
  paste(c(
    block("beta", "x, a, b, lower tail, upper tail", beta_cases),
    block("betaQuantile", "p, a, b, quantile", quantile_cases),
    block("normal", "p, quantile, z, lower tail", normal_cases),
    block("student", "p, degrees of freedom, quantile", student_cases),
    block("binomial", "k, n, p, P(K <= k), P(K >= k)", binomial_cases),
    block("clopperPearson", "k, n, level, low, high", clopper_cases),
    block("fisher", "k1, n1, k2, n2, two-sided, less, greater", fisher_cases),
    block("survival", paste("at risk, lost, level, survival, standard error, plain low and high,",
      "log-log low and high (null: R has none)"), survival_cases)
  ), collapse = ",\n"), "}"), "tests/domain/statistics/reference/r-reference.json")
