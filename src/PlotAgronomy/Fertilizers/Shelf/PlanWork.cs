using System.Collections.Immutable;
using System.Globalization;

namespace PlotAgronomy.Fertilizers;

/// <summary>The working of a plan, line by line.</summary>
internal static class PlanWork
{
    internal static ImmutableArray<WorkedLine> Of(PurchasePlan plan)
    {
        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        foreach (var balance in plan.Balances.Where(b => b.AtLeast > ApplicationRate.Zero || b.AtMost is not null))
        {
            string cap = balance.AtMost is { } most ? $", at most {Amounts.Print(most.Over(plan.Area), decimals: 2)}" : "";
            lines.Add(
                new WorkedLine(
                    $"{NutrientSymbols.Of(balance.Nutrient)} wanted",
                    "rate x area",
                    $"{Amounts.Print(balance.AtLeast, decimals: 2)} x {Amounts.Print(plan.Area, decimals: 3)} = "
                        + $"{Amounts.Print(balance.AtLeast.Over(plan.Area), decimals: 2)}{cap}"
                )
            );
        }

        foreach (var line in plan.Lines)
        {
            lines.Add(
                new WorkedLine(
                    line.Product.ToString(),
                    "packages x price",
                    $"{Number(line.Packages)} x {line.Product.Price.ToString(CultureInfo.InvariantCulture)} = "
                        + $"{Money(line.Cost)}; spread {Amounts.Print(line.Spread, decimals: 2)} "
                        + $"({Amounts.Print(line.Rate, decimals: 2)}), {Amounts.Print(line.Leftover, decimals: 2)} left"
                )
            );
        }

        foreach (var balance in plan.Balances)
        {
            var terms = plan
                .Lines.Where(l => l.Product.Counted.Percent(balance.Nutrient) > 0)
                .Select(l =>
                    $"{Amounts.Print(l.Spread, decimals: 2)} x "
                    + $"{l.Product.Counted.Percent(balance.Nutrient).ToString("0.####", CultureInfo.InvariantCulture)} %"
                );
            lines.Add(
                new WorkedLine(
                    $"{NutrientSymbols.Of(balance.Nutrient)} spread",
                    "sum of weight x analysis, over area",
                    balance.Delivered > ApplicationRate.Zero
                        ? $"({string.Join(" + ", terms)}) / {Amounts.Print(plan.Area, decimals: 3)} = "
                            + $"{Amounts.Print(balance.Delivered, decimals: 2)}{Share(balance)}"
                        : "none of these products holds any"
                )
            );
        }

        string proof = plan.IsProvenCheapest ? "no cheaper set exists" : $"at most {Money(plan.ProvenGap)} above the cheapest";
        lines.Add(new WorkedLine("Total", "sum of the prices", $"{Money(plan.TotalCost)} ({proof})"));
        return lines.ToImmutable();
    }

    private static string Share(NutrientBalance balance) =>
        balance.PercentOfNeed is { } percent ? $", {Amounts.Print(percent, 1)} % of the need" : "";

    private static string Number(double packages) => packages.ToString("0.####", CultureInfo.InvariantCulture);

    private static string Money(decimal amount) =>
        Math.Round(amount, 2, MidpointRounding.AwayFromZero).ToString("#,##0.00", CultureInfo.InvariantCulture);
}
