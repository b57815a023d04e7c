# Writes charts-reference.json: what R computes for charts, run rules, CUSUM chains, curves and change scans.
#
# Re-run by hand, from the project's folder, with Debian's r-base-core:
#
#     Rscript tests/domain/statistics/reference/charts-reference.R
#
# Last run with R 4.2.2 (written into the file). Debian has no package of control charts for attributes, so limits are
# the formulas of D. C. Montgomery, Introduction to Statistical Quality Control, in R's vectors; chains are solved as
# matrices, curves are fitted by lm, change scans enumerate every order. The seed is fixed: the same version gives the
# same file. One case a line; numbers have 17 digits, so that none is rounded.
set.seed(20260107)

number <- function(x) ifelse(is.finite(x), trimws(formatC(x, digits = 17, format = "g")), "null")
row <- function(...) paste0("[", paste(unlist(lapply(list(...), function(each) {
  if (length(each) == 1 && !inherits(each, "AsIs")) number(each)
  else paste0("[", paste(number(unclass(each)), collapse = ","), "]")
})), collapse = ","), "]")
list_of <- function(x) I(x)
from_zero <- function(is_signal) I(which(is_signal) - 1)
ends <- function(x) I(c(x[1], x[length(x)]))
beyond <- function(value, low, high, sigma) value > high + 1e-9 * sigma | value < low - 1e-9 * sigma

sizes_of <- function(n, most) I(sample(0:most, n, replace = TRUE))
attribute_case <- function(case, kind) {
  n <- sample(1:12, 1)
  sizes <- sizes_of(n, sample(c(1, 12, 200, 1e6), 1))
  if (sum(sizes) == 0) sizes[1] <- 5
  rate <- sample(c(0, 0.01, 0.05, 0.3, 1), 1)
  counts <- if (kind == "p") rbinom(n, sizes, rate) else rpois(n, sizes * rate)
  laney <- case %% 2
  keep <- sizes > 0
  centre <- sum(counts) / sum(sizes)
  value <- (counts / sizes)[keep]
  sigma <- sqrt(if (kind == "p") centre * (1 - centre) / sizes[keep] else centre / sizes[keep])
  if (laney && length(value) > 1 && all(sigma > 0)) {
    z <- (value - centre) / sigma
    sigma <- sigma * mean(abs(diff(z))) / 1.128
  }
  low <- pmax(0, centre - 3 * sigma)
  high <- if (kind == "p") pmin(1, centre + 3 * sigma) else centre + 3 * sigma
  signals <- rep(FALSE, n)
  signals[keep] <- beyond(value, centre - 3 * sigma, centre + 3 * sigma, sigma) & abs(value - centre) > 1e-12 * centre
  row(I(counts), sizes, laney, centre, ends(low), ends(high), from_zero(signals))
}

c_case <- function(case) {
  counts <- rpois(sample(1:15, 1), sample(c(0, 1, 16, 1000), 1)) * sample(c(1, 1, 3), 1)
  centre <- mean(counts)
  low <- max(0, centre - 3 * sqrt(centre))
  high <- centre + 3 * sqrt(centre)
  row(I(counts), centre, low, high, from_zero(beyond(counts, centre - 3 * sqrt(centre), high, sqrt(centre))))
}

g_case <- function(case) {
  gaps <- rgeom(sample(1:15, 1), sample(c(1, 0.3, 0.05, 0.0005), 1))
  false_alarm <- sample(c(0.0027, 0.05), 1)
  centre <- mean(gaps)
  high <- centre + 3 * sqrt(centre * (centre + 1))
  # Beyond the limits by chance: the tails of the geometric distribution themselves.
  p <- 1 / (1 + centre)
  short <- pgeom(gaps, p) < false_alarm / 2
  long <- pgeom(gaps - 1, p, lower.tail = FALSE) < false_alarm / 2
  row(I(gaps), false_alarm, centre, high, from_zero(gaps > high), from_zero(short | long))
}

individuals_case <- function(case) {
  x <- round(rnorm(sample(2:15, 1), sample(c(0, 50, 1e5), 1), sample(c(0, 1, 30), 1)), 2)
  if (runif(1) < 0.3) x[length(x)] <- x[length(x)] + 100
  range <- mean(abs(diff(x)))
  sigma <- range / 1.128
  low <- mean(x) - 3 * sigma
  high <- mean(x) + 3 * sigma
  row(I(x), mean(x), range, low, high, from_zero(beyond(x, low, high, sigma) & sigma > 0))
}

ewma_case <- function(case) {
  x <- round(rnorm(sample(1:15, 1), 50, 2), 2) + sample(c(0, 3), 1)
  lambda <- sample(c(0.05, 0.2, 0.3, 1, 0.77), 1)
  k <- sample(c(2.5, 3), 1)
  i <- seq_along(x)
  # The average as its sum of weights, not step by step.
  average <- sapply(i, function(t) sum(lambda * (1 - lambda)^(t - 1:t) * x[1:t]) + (1 - lambda)^t * 50)
  width <- k * 2 * sqrt(lambda / (2 - lambda) * (1 - (1 - lambda)^(2 * i)))
  long <- k * 2 * sqrt(lambda / (2 - lambda))
  row(I(x), lambda, k, I(average), ends(50 + width), 50 + long, from_zero(abs(average - 50) > width * (1 + 1e-9)))
}

cusum_case <- function(case) {
  x <- round(rnorm(sample(1:20, 1), 50 + sample(c(-2, 0, 2), 1), 2), 2)
  k <- sample(c(0.5, 0.25, 1), 1)
  z <- (x - 50) / 2
  # The sum is how far the drift is above its lowest point so far.
  drift <- function(z) { s <- cumsum(z - k); s - pmin(0, cummin(s)) }
  row(I(x), k, I(drift(z)), I(drift(-z)))
}

rule_hits <- function(z) {
  windows <- function(width) lapply(seq_along(z), function(i) z[max(1, i - width + 1):i])
  count <- function(width, needed, bound) sapply(windows(width), function(w) {
    newest <- w[length(w)]
    (newest > bound && sum(w > bound) >= needed) || (newest < -bound && sum(w < -bound) >= needed)
  })
  run <- function(width, test) sapply(windows(width), function(w) length(w) == width && test(w))
  monotone <- function(w) all(diff(w) > 0) || all(diff(w) < 0)
  zigzag <- function(w) { d <- sign(diff(w)); all(d != 0) && all(d[-1] == -d[-length(d)]) }
  list(count(1, 1, 3), count(3, 2, 2), count(5, 4, 1), count(8, 8, 0), count(9, 9, 0), run(6, monotone),
       run(14, zigzag), run(15, function(w) all(abs(w) < 1)), run(8, function(w) all(abs(w) > 1)))
}
rules_case <- function(case) {
  n <- sample(5:30, 1)
  z <- round(switch(case %% 4 + 1, rnorm(n), rnorm(n, 1.2), rnorm(n, 0, 0.5), rep(c(-1.5, 1.5), length.out = n) + runif(n, -0.4, 0.4)), 1)
  do.call(row, c(list(I(z)), lapply(rule_hits(z), from_zero)))
}

chain_case <- function(case) {
  p0 <- runif(1, 0.005, 0.2)
  p1 <- min(0.9, p0 * runif(1, 1.3, 5))
  weight <- max(1, round(log(p1 / p0) / (log1p(-p0) - log1p(-p1))))
  threshold <- sample(1:120, 1)
  flawed <- sample(c(p0, p1, runif(1, 0.01, 1)), 1)
  within <- sample(c(0, 1, 10, 100, 500), 1)
  moves <- matrix(0, threshold, threshold)
  for (s in 0:(threshold - 1)) {
    down <- max(0, s - 1)
    moves[s + 1, down + 1] <- moves[s + 1, down + 1] + 1 - flawed
    if (s + weight < threshold) moves[s + 1, s + weight + 1] <- moves[s + 1, s + weight + 1] + flawed
  }
  arl <- solve(diag(threshold) - moves, rep(1, threshold), tol = 0)[1]
  state <- c(1, rep(0, threshold - 1))
  alarm <- 0
  for (i in seq_len(within)) { alarm <- alarm + flawed * sum(state[(0:(threshold - 1)) + weight >= threshold]); state <- state %*% moves }
  # A matrix near to singular answers with few digits: how near, so that the comparison can allow for it.
  row(p0, p1, threshold, flawed, within, weight, arl, alarm)
}

curve_case <- function(case) {
  n <- sample(2:25, 1)
  times <- signif(sample(c(0.2, 7, 300), 1) * (1:n)^(-runif(1, -0.1, 0.7)) * exp(rnorm(n, 0, sample(c(0.05, 0.4), 1))), 6)
  average <- case %% 2
  y <- log(if (average) cumsum(times) / 1:n else times)
  level <- sample(c(0.8, 0.9, 0.95), 1)
  fit <- lm(y ~ log(1:n))
  bounds <- if (n > 2) 2^confint(fit, level = level)[2, ] else c(NA, NA)
  row(I(times), average, level, unname(coef(fit)[2]), unname(2^coef(fit)[2]), unname(exp(coef(fit)[1])), I(unname(bounds)))
}

# Every order of the flawed pieces by combn, and the strangest split of each by phyper.
scan_case <- function(case) {
  repeat {
    sizes <- sample(1:6, sample(2:6, 1), replace = TRUE)
    total <- sum(sizes)
    flawed <- sample(1:(total - 1), 1)
    if (choose(total, flawed) <= 5000) break
  }
  cut <- cumsum(sizes)[-length(sizes)]
  orders <- combn(total, flawed)
  tails <- apply(orders, 2, function(at) {
    so_far <- sapply(cut, function(c) sum(at <= c))
    min(phyper(so_far, flawed, total - flawed, cut), phyper(so_far - 1, flawed, total - flawed, cut, lower.tail = FALSE))
  })
  mine <- sample(ncol(orders), 1)
  counts <- diff(c(0, sapply(c(cut, total), function(c) sum(orders[, mine] <= c))))
  share <- function(tail) mean(tails <= tail * (1 + 1e-9))
  row(I(counts), I(sizes), tails[mine], share(tails[mine]), share(min(tails)))
}

arl_case <- function(case) {
  shift <- runif(1, -5, 5)
  sigmas <- runif(1, 0.5, 6)
  row(shift, sigmas, 1 / (pnorm(-sigmas + shift) + pnorm(-sigmas - shift)))
}

block <- function(name, columns, make) {
  cases <- vapply(1:220, make, "")
  sprintf('  "%s": {\n    "columns": "%s",\n    "cases": [\n      %s\n    ]\n  }', name, columns, paste(cases, collapse = ",\n      "))
}
out <- paste(c(
  sprintf('  "made": "%s, seed 20260107"', R.version.string),
  block("pChart", "counts, sizes, Laney, centre, first and last low, first and last high, signals", function(i) attribute_case(i, "p")),
  block("uChart", "counts, sizes, Laney, centre, first and last low, first and last high, signals", function(i) attribute_case(i, "u")),
  block("cChart", "counts, centre, low, high, signals", c_case),
  block("gChart", "gaps, false alarm, centre, 3-sigma high, signals by 3 sigma, signals by chance", g_case),
  block("individualsChart", "values, centre, mean range, low, high, signals", individuals_case),
  block("ewmaChart", "values about 50 with sigma 2, lambda, k, averages, first and last high, asymptotic high, signals", ewma_case),
  block("cusum", "values about 50 with sigma 2, k, high sums, low sums", cusum_case),
  block("runRules", "deviations, then the points of each rule in the order of the type", rules_case),
  block("bernoulliCusum", "p0, p1, threshold, flawed, within, weight, average run length, chance of an alarm", chain_case),
  block("learningCurve", "times, cumulative average, level, exponent, rate, first unit, interval of the rate", curve_case),
  block("changeScan", "counts, sizes, tail, p, least p", scan_case),
  block("shewhartArl", "shift, sigmas, average run length", arl_case)
), collapse = ",\n")
writeLines(paste0("{\n", out, "\n}"), "tests/domain/statistics/reference/charts-reference.json")
