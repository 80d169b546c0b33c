# Derives the reference values of the tests of learning from samples. Written with R 4.2.2.
# Run: Rscript src/test/R/learning.R

show <- function(name, ...) cat(sprintf("%-52s %s\n", name, paste(formatC(c(...), digits = 9, format = "g"), collapse = " ")))
moments <- function(density, lower, upper) {
  f <- function(g) integrate(function(x) g(x) * density(x), lower, upper, rel.tol = 1e-12, subdivisions = 2000)$value
  mass <- f(function(x) 1); mean <- f(function(x) x) / mass
  c(mean, sqrt(f(function(x) (x - mean)^2) / mass))
}

# Normal update: prior GM 1, GSD 2.5; within GSD 2; data 2.1, 1.4, 3.0
show("normal update log mean, sd", moments(function(m) dnorm(m, 0, log(2.5)) * sapply(m, function(v) prod(dnorm(log(c(2.1, 1.4, 3)), v, log(2)))), -3, 4))

# One source thought to give 25 with sd 1.3, found below 10 with sd 0.15
show("one below 10: mean, sd of the part", moments(function(p) dnorm(p, 0, 1.3) * pnorm((log(10 / 25) - p) / 0.15), -12, 4))

# The same part in three observations, each with an own part of sd 0.8: told 12 and 30, one below 8
own <- sqrt(0.8^2 + 0.15^2)
show("two told, one below: mean, sd of the shared part", moments(function(p) dnorm(p, 0, 1.0) * dnorm(log(12 / 25), p, own) * dnorm(log(30 / 25), p, own) * pnorm((log(8 / 25) - p) / own), -8, 5))

# Twelve below 5 in a row that share a part of sd 1, own sd 0.8
show("twelve below 5: mean, sd of the shared part", moments(function(p) dnorm(p, 0, 1.0) * pnorm((log(5 / 25) - p) / own)^12, -9, 3))

# Two sources of 15 and 10 with parts a (sd 1.0) and b (sd 0.7), mean found to be 10 (sd 0.15)
grid <- expand.grid(a = seq(-5, 3, length.out = 3001), b = seq(-4, 2.5, length.out = 2401))
w <- with(grid, exp(-a^2 / 2 - (b / 0.7)^2 / 2 - ((log(15 * exp(a) + 10 * exp(b)) - log(10)) / 0.15)^2 / 2))
f <- with(grid, log(15 * exp(a) + 10 * exp(b))); w <- w / sum(w); m <- sum(w * f)
show("two sources, posterior mean and sd of log sum", m, sqrt(sum(w * (f - m)^2)))
show("two sources, posterior means of a, b", sum(w * grid$a), sum(w * grid$b))
