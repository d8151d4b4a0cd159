# Answers, one a line, to questions on standard input: a name and its numbers. Base R's own distributions only.

noncentral_t <- function(t, nu, delta) pt(t, nu, delta)

one_sided <- function(n, share, confidence) qt(confidence, n - 1, qnorm(share) * sqrt(n)) / sqrt(n)

radius <- function(x, share) {
  uniroot(function(r) pnorm(x + r) - pnorm(x - r) - share, c(0, abs(x) + 9), tol = 1e-13)$root
}

fit <- function(n, share, k) {
  if (k <= 0) {
    return(0)
  }
  integrand <- function(z) {
    r <- vapply(z / sqrt(n), radius, 0, share = share)
    2 * dnorm(z) * pchisq((n - 1) * (r / k)^2, n - 1, lower.tail = FALSE)
  }
  integrate(integrand, 0, 8, rel.tol = 1e-10, subdivisions = 200L)$value
}

two_sided <- function(n, share, confidence) {
  uniroot(function(k) fit(n, share, k) - confidence, c(0.01, 2000), tol = 1e-10)$root
}

shifted_one_sided <- function(n, share, margin, deviation, common) {
  delta <- qnorm(share) * sqrt(n)
  integrand <- function(shift) {
    dnorm(shift, sd = common) * pt(sqrt(n) * (margin + shift) / deviation, n - 1, delta)
  }
  integrate(integrand, -8 * common, 8 * common, rel.tol = 1e-9, subdivisions = 400L)$value
}

shifted_fit <- function(n, share, mean, deviation, lower, upper, common) {
  integrand <- function(shift) {
    margin <- pmin(mean + shift - lower, upper - mean - shift)
    dnorm(shift, sd = common) * vapply(margin / deviation, function(k) fit(n, share, k), 0)
  }
  low <- max(-7 * common, lower - mean)
  high <- min(7 * common, upper - mean)
  inner <- c((lower + upper) / 2 - mean, 0)
  ends <- sort(c(low, inner[inner > low & inner < high], high))
  sum(mapply(function(a, b) integrate(integrand, a, b, rel.tol = 1e-7)$value, head(ends, -1), tail(ends, -1)))
}

binomial_at_most <- function(k, n, share) pbinom(k, n, share)

share_at_least <- function(k, n, confidence) qbeta(1 - confidence, k, n - k + 1)

questions <- file("stdin", open = "r")
for (line in readLines(questions)) {
  words <- strsplit(trimws(line), " +")[[1]]
  cat(sprintf("%.17g\n", do.call(words[1], as.list(as.numeric(words[-1])))))
}
