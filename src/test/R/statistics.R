# Derives reference values of the statistics tests; those of the fifteen-value example: lognormal.py. Written with R 4.2.2 (2022-10-31).
# Run: Rscript src/test/R/statistics.R
# Only packages that come with R itself are used; the tests do not need R.

show <- function(name, ...) cat(sprintf("%-44s %s\n", name, paste(formatC(c(...), digits = 9, format = "g"), collapse = " ")))

# Upper tolerance limits: exp(mean + K s), K = qt(conf, n - 1, qnorm(0.95) sqrt(n)) / sqrt(n)
k <- function(n, conf) qt(conf, n - 1, qnorm(0.95) * sqrt(n)) / sqrt(n)
show("K 95 n=3,6,10,20,30", k(3, .95), k(6, .95), k(10, .95), k(20, .95), k(30, .95))
show("K 70 n=6,10", k(6, .70), k(10, .70))

# Unbiased mean: GM times 0F1(; (n-1)/2; (n-1)^2 s^2 / (4n)), through the Bessel function
mvue <- function(x) {
  y <- log(x); n <- length(y); b <- (n - 1) / 2; z <- (n - 1)^2 * var(y) / (4 * n)
  exp(mean(y)) * gamma(b) * z^((1 - b) / 2) * besselI(2 * sqrt(z), b - 1)
}
wide <- c(0.1, 0.5, 0.8, 3, 12, 0.05, 40)
show("wide MVUE", mvue(wide))

# Shapiro and Wilk on the logarithms
sw <- function(x) { t <- shapiro.test(log(x)); c(t$statistic, t$p.value) }
eleven <- c(0.2, 0.3, 0.31, 0.5, 0.7, 0.9, 1.1, 1.2, 2.5, 3.1, 14)
twelve <- c(eleven, 0.04)
show("shapiro.test log three 1 2 7", sw(c(1, 2, 7)))
show("shapiro.test log four 1 2 7 8", sw(c(1, 2, 7, 8)))
show("shapiro.test log eleven", sw(eleven))
show("shapiro.test log twelve", sw(twelve))
show("shapiro.test 1..50 plain", sw(exp(1:50)))
show("shapiro.test squares 1..30 plain", sw(exp((1:30)^2 / 100)))

# Results below detection: maximum likelihood
censored <- function(told, below) {
  minus <- function(p) -sum(dnorm(log(told), p[1], exp(p[2]), log = TRUE)) - sum(pnorm(log(below), p[1], exp(p[2]), log.p = TRUE))
  p <- optim(c(mean(log(told)), 0), minus, method = "BFGS", control = list(reltol = 1e-16, maxit = 1000))$par
  c(exp(p[1]), exp(exp(p[2])))
}
show("censored b GM GSD", censored(c(0.05, 0.12, 0.4), c(0.03, 0.03, 0.1)))
if (requireNamespace("survival", quietly = TRUE)) {
  fit <- function(told, below) {
    f <- survival::survreg(survival::Surv(c(told, below), c(rep(1, length(told)), rep(0, length(below))), type = "left") ~ 1, dist = "lognormal", control = survival::survreg.control(rel.tolerance = 1e-12))
    c(exp(f$coefficients), exp(f$scale))
  }
  show("survreg b GM GSD", fit(c(0.05, 0.12, 0.4), c(0.03, 0.03, 0.1)))
}

# Mann and Kendall, slope after Sen with its 95 % interval (ranks between two slopes interpolated)
trend <- function(y) {
  n <- length(y); p <- combn(n, 2)
  slopes <- sort((y[p[2, ]] - y[p[1, ]]) / (p[2, ] - p[1, ]))
  S <- sum(sign(y[p[2, ]] - y[p[1, ]]))
  t <- table(y); v <- (n * (n - 1) * (2 * n + 5) - sum(t * (t - 1) * (2 * t + 5))) / 18
  z <- if (S == 0) 0 else (S - sign(S)) / sqrt(v)
  N <- length(slopes); C <- qnorm(0.975) * sqrt(v)
  at <- function(r) approx(seq_len(N), slopes, r, rule = 2)$y
  c(S, v, z, 2 * pnorm(-abs(z)), median(slopes), at((N - C) / 2), at((N + C) / 2 + 1))
}
show("trend 1 2 3 4 5 16 7", trend(c(1, 2, 3, 4, 5, 16, 7)))
ties <- c(3.1, 2.9, 2.9, 2.4, 2.6, 2.4, 2.0, 2.2, 1.8, 1.8, 1.8, 1.5)
show("trend ties", trend(ties))
show("cor.test kendall ties z", cor.test(seq_along(ties), ties, method = "kendall", exact = FALSE, continuity = TRUE)$statistic)
