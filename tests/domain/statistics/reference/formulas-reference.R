# Writes formulas-reference.json: what R computes for judgements of which no package has a ready function.
#
# Re-run by hand, from the project's folder, with Debian's r-base-core:
#
#     Rscript tests/domain/statistics/reference/formulas-reference.R
#
# Last run with R 4.2.2 (written into the file). Each formula is written anew from its definition, by another way than in
# src/domain/statistics where there is one; quantiles and tails are R's own. The seed is fixed: the same version gives the
# same file. One case a line; numbers have 17 digits, so that none is rounded.
set.seed(20260109)

number <- function(x) ifelse(is.finite(x), trimws(formatC(x, digits = 17, format = "g")), "null")
row <- function(...) paste0("[", paste(unlist(lapply(list(...), function(each) {
  if (length(each) == 1 && !inherits(each, "AsIs")) number(each)
  else paste0("[", paste(number(unclass(each)), collapse = ","), "]")
})), collapse = ","), "]")

yield_case <- function(case) {
  steps <- sample(1:14, 1)
  entered <- I(round(10^runif(steps, 0, 6)))
  good <- I(mapply(rbinom, 1, entered, runif(steps, 0.3, 1)))
  share <- pmax(good, 1) / entered
  row(entered, pmax(good, 1), I(share), exp(sum(log(share))), exp(mean(log(share))))
}

flow_case <- function(case) {
  wip <- 10^runif(1, -2, 6); throughput <- 10^runif(1, -3, 4)
  row(wip, throughput, exp(log(wip) - log(throughput)))
}

curve_case <- function(case) {
  first <- 10^runif(1, -1, 3); rate <- if (case %% 5) runif(1, 0.5, 0.97) else runif(1, 1, 1.2); n <- round(10^runif(1, 0, 3.5)); average <- case %% 2
  exponent <- log(rate) / log(2)
  total <- function(n) if (average) n * first * rate^log2(n) else sum(first * rate^log2(seq_len(n)))
  piece <- if (!average) first * rate^log2(n) else if (n == 1) first
    else first * n^exponent * (n - (n - 1) * exp(exponent * log1p(-1 / n)))
  time <- first * runif(1, 0.05, 1)
  row(first, rate, average, n, exponent, piece, total(n), time, if (rate < 1) 2^(log2(time / first) / log2(rate)) else NA)
}

moments_case <- function(case) {
  repeat {
    groups <- sample(2:12, 1)
    n <- round(10^runif(groups, 0, 4)); k <- rbinom(groups, n, rbeta(groups, 2, 5))
    rates <- k / n
    if (var(rates) > 0 && var(rates) < 0.99 * mean(rates) * (1 - mean(rates))) break
  }
  # The shapes by the odds of the mean, instead of by its precision.
  m <- mean(rates); odds <- m / (1 - m)
  beta <- (odds / (var(rates) * (1 + odds)^2) - 1) / (1 + odds)
  row(I(k), I(n), m, sd(rates), odds * beta, beta)
}

bound_case <- function(case) {
  m <- sample(1:15, 1)
  p <- runif(m, 0, sample(c(1, 0.05), 1))
  if (case %% 5 == 0) p <- round(p, 1)
  least <- p * runif(m) * sample(c(0, 1), m, replace = TRUE)
  o <- order(p)
  steps <- sapply(seq_along(o), function(r) p[o[r]] * sum(least[o[r:m]] <= p[o[r]]))
  adjusted <- numeric(m); adjusted[o] <- cummax(pmin(1, steps))
  alpha <- runif(1, 0.001, 0.2)
  row(I(p), I(least), I(adjusted), alpha, alpha / m)
}

weight_of <- function(p0, p1) max(1, round(log(p1 / p0) / (log1p(-p0) - log1p(-p1))))

cusum_case <- function(case) {
  p0 <- runif(1, 0.005, 0.2); p1 <- min(0.9, p0 * runif(1, 1.3, 5))
  weight <- weight_of(p0, p1)
  flawed <- rbinom(sample(1:60, 1), 1, sample(c(p0, p1, 0.5), 1))
  drift <- cumsum(ifelse(flawed == 1, weight, -1))
  # The sum is how far the drift is above its lowest point so far.
  sums <- drift - pmin(0, cummin(drift))
  threshold <- sample(c(1, 5, weight, 2 * weight + 3), 1)
  at <- which(sums >= threshold)[1]
  since <- if (is.na(at)) NA else sum(tail(c(0, which(sums[seq_len(at)] == 0)), 1))
  row(p0, p1, threshold, I(flawed), I(sums), at - 1, since)
}

alarm_of <- function(threshold, weight, p, within) {
  state <- c(1, rep(0, threshold - 1)); quiet <- 1
  for (i in seq_len(within)) {
    down <- c(state[-1], 0); down[1] <- down[1] + state[1]
    up <- c(rep(0, weight), state)[seq_len(threshold)]
    state <- (1 - p) * down + p * up
  }
  1 - sum(state)
}
threshold_case <- function(case) {
  p0 <- runif(1, 0.01, 0.2); p1 <- min(0.9, p0 * runif(1, 1.5, 5))
  weight <- weight_of(p0, p1)
  within <- sample(c(1, 10, 50, 120), 1); false_alarm <- sample(c(0.01, 0.05, 0.2), 1) * runif(1, 0.9, 1.1)
  threshold <- 1
  while (alarm_of(threshold, weight, p0, within) > false_alarm) threshold <- threshold + 1
  row(p0, p1, within, false_alarm, threshold)
}

posterior_case <- function(case) {
  stages <- sample(1:14, 1); left <- round(10^runif(1, 0, sample(c(2, 4, 6), 1)))
  loss <- if (case %% 10 == 0) 0 else runif(1, 0, 0.3)
  stop <- if (case %% 7 == 0) 0 else runif(1, 0, 0.2)
  at_risk <- numeric(0); lost <- numeric(0)
  for (stage in seq_len(stages)) {
    dying <- rbinom(1, left, loss)
    at_risk <- c(at_risk, left); lost <- c(lost, dying)
    left <- left - dying - rbinom(1, left - dying, stop)
  }
  level <- sample(c(0.8, 0.9, 0.95), 1)
  j <- seq_len(stages)
  a <- at_risk - lost + 1 + (stages - j) / stages; b <- lost + 1 / stages
  mean <- exp(-sum(log1p(b / a)))
  # The squared coefficient of variation of a product, so that no difference of like numbers is taken.
  spread <- expm1(sum(log1p(b / (a * (a + b + 1)))))
  whole <- (1 - mean) / (mean * spread) - 1
  alpha <- mean * whole; beta <- (1 - mean) * whole
  row(I(at_risk), I(lost), level, mean, qbeta((1 - level) / 2, alpha, beta), qbeta((1 + level) / 2, alpha, beta),
      max(0, alpha - 1), max(0, alpha - 1) + max(0, beta - 1))
}

middle <- function(group) sum(group$minutes) / sum(group$pieces)
together <- function(minutes, pieces, begins, instant) {
  soon <- !is.na(minutes) & minutes <= instant
  opens <- !(soon & !begins); opens[1] <- TRUE
  # Tapped as soon as the stage was entered: made before, and nobody knows in how long.
  minutes[opens & soon] <- NA
  group <- cumsum(opens)
  sums <- data.frame(minutes = as.vector(tapply(minutes, group, sum)), pieces = as.vector(tapply(pieces, group, sum)))
  sums[!is.na(sums$minutes), ]
}
work_time <- function(s, from = NULL) {
  cut <- 2.33
  second <- 1 - cut * dnorm(cut) / pnorm(cut)
  away <- function(mean, cv) {
    sigma <- sqrt(log(1 + cv^2 / s$pieces))
    (log(s$minutes) - log(mean * s$pieces) + sigma^2 / 2) / sigma
  }
  now <- if (is.null(from)) c(median(s$minutes / s$pieces), 0.5) else from
  for (round in 1:100) {
    work <- away(now[1], now[2]) <= cut
    if (!any(work)) break
    share <- pnorm(cut - sqrt(log(1 + now[2]^2 / s$pieces[work]))) / pnorm(cut)
    mean <- sum(s$minutes[work]) / sum(s$pieces[work] * share)
    variance <- log(1 + now[2]^2) * base::mean(away(mean, now[2])[work]^2) / second
    then <- c(mean, min(2, max(0.02, sqrt(exp(variance) - 1))))
    settled <- abs(then[1] / now[1] - 1) < 1e-9 && abs(then[2] - now[2]) < 1e-9
    now <- then
    if (settled) break
  }
  list(mean = now[1], cv = now[2], work = away(now[1], now[2]) <= cut)
}
minutes_case <- function(case) {
  n <- sample(1:60, 1); begins <- runif(n) < 0.1; begins[1] <- TRUE
  pieces <- ifelse(runif(n) < 0.1, sample(2:12, n, replace = TRUE), 1)
  minutes <- round(pieces * sample(c(0.5, 4, 20), 1) * exp(rnorm(n, 0, sample(c(0.2, 0.6), 1))), 4)
  minutes[runif(n) < 0.15] <- 0.01
  minutes[runif(n) < 0.05] <- 90
  minutes[runif(n) < 0.05] <- NA
  level <- sample(c(0.8, 0.9, 0.95), 1)
  hand <- together(minutes, pieces, begins, 2 / 60)
  s <- together(minutes, pieces, begins, max(2 / 60, 0.1 * if (nrow(hand)) median(hand$minutes / hand$pieces) else 0))
  told <- row(I(ifelse(is.na(minutes), -1, minutes)), I(pieces), I(begins * 1), level)
  if (nrow(s) == 0) return(sub("]$", ",[],null,null]", told))
  all <- work_time(s)
  half_of <- function(mean, cv) mean / sqrt(1 + cv^2)
  limits <- function(of) {
    parts <- min(20, nrow(s))
    if (parts < 3) return(c(NA, NA))
    without <- sapply(1:parts, function(part) {
      left <- work_time(s[(seq_len(nrow(s)) - 1) %% parts != part - 1, ], c(all$mean, all$cv))
      log(of(left$mean, left$cv))
    })
    error <- sqrt((parts - 1)^2 / parts * var(without))
    of(all$mean, all$cv) * exp(c(-1, 1) * qt((1 + level) / 2, parts - 1) * error)
  }
  work <- s[all$work, ]
  sub("]$", paste0(",", sub("^.", "", row(I(c(all$mean, half_of(all$mean, all$cv), all$cv, sum(work$pieces), sum(work$minutes))),
      I(limits(function(mean, cv) mean)), I(limits(half_of))))), told)
}

through_case <- function(case) {
  n <- sample(2:25, 1); at <- sort(1 + 10^runif(n, -1, 4)); level <- sample(c(0.8, 0.9, 0.95), 1)
  times <- signif(sample(c(0.2, 7, 300), 1) * at^(-runif(1, -0.1, 0.7)) * exp(rnorm(n, 0, 0.3)), 6)
  fit <- lm(log(times) ~ log(at))
  bounds <- if (n > 2) 2^confint(fit, level = level)[2, ] else c(NA, NA)
  row(I(at), I(times), level, unname(coef(fit)[2]), unname(exp(coef(fit)[1])), I(unname(bounds)))
}

block <- function(name, columns, make) {
  cases <- vapply(1:220, make, "")
  sprintf('  "%s": {\n    "columns": "%s",\n    "cases": [\n      %s\n    ]\n  }', name, columns, paste(cases, collapse = ",\n      "))
}
out <- paste(c(
  sprintf('  "made": "%s, seed 20260109"', R.version.string),
  block("yields", "entered, good, yield of each step, their product, their geometric mean", yield_case),
  block("littlesLaw", "work in progress, throughput, lead time", flow_case),
  block("learningModel", "first piece, rate, cumulative average, n, exponent, time of piece n, of all n, a time, n to reach it", curve_case),
  block("betaMoments", "k, n, mean, sd, alpha, beta", moments_case),
  block("taroneHolm", "p values, least possible, adjusted, false alarm, Bonferroni threshold", bound_case),
  block("bernoulliCusumSums", "p0, p1, threshold, flawed, sums, signal, since (null: none)", cusum_case),
  block("bernoulliCusumThreshold", "p0, p1, within, false alarm, threshold", threshold_case),
  block("survivalPosterior", "at risk, lost, level, mean, low, high, worth k, worth n", posterior_case),
  block("minutesPerPiece", paste("minutes (-1: not known), pieces, begins, level, then mean, median, cv, pieces, minutes (empty:",
    "nothing known), interval of the mean, of the median"), minutes_case),
  block("learningCurveThrough", "numbers, times, level, exponent, first unit, interval of the rate", through_case)
), collapse = ",\n")
writeLines(paste0("{\n", out, "\n}"), "tests/domain/statistics/reference/formulas-reference.json")
