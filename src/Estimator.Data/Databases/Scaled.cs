using Estimator.Engine.Measures;

namespace Estimator.Data.Databases;

/// <summary>Numbers as whole ten-thousandths, which both databases add and compare alike.</summary>
internal static class Scaled
{
    private const decimal PerUnit = 10_000m;

    internal static long ToE4(decimal value) => decimal.ToInt64(decimal.Round(value * PerUnit, 0, MidpointRounding.AwayFromZero));

    internal static decimal FromE4(long value) => value / PerUnit;

    internal static long ToE4(Money money) => ToE4(money.ToDollars());

    internal static Money MoneyFromE4(long value) => Money.FromDollars(FromE4(value));
}
