using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>What to buy and what to spread, what it gives, what it costs, and how sure that is.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class Purchase : IWorkedResult
{
    private readonly FieldConditions conditions;
    private readonly PlotNeed need;

    internal Purchase(FieldConditions field, PlotNeed need) => (conditions, this.need) = (field, need);

    /// <summary>Gets what is bought and spread whole.</summary>
    public required PurchaseForm Form { get; init; }

    /// <summary>Gets the area of the plot.</summary>
    public required Area Area { get; init; }

    /// <summary>Gets the products used, in the order of their names.</summary>
    public required ImmutableArray<PurchaseLine> Lines { get; init; }

    /// <summary>Gets what is given of every nutrient asked for or spread, in the order of <see cref="PlantNutrient"/>.</summary>
    public required ImmutableArray<NutrientBalance> Balances { get; init; }

    /// <summary>Gets the price of everything bought, in the one currency of the prices.</summary>
    public required decimal TotalCost { get; init; }

    /// <summary>Gets a value indicating whether every need is met.</summary>
    public bool MeetsEveryNeed => Balances.All(b => b.IsMet);

    /// <summary>Gets a value indicating whether no cheaper plan of this form exists. For a plan that falls short: none as close
    /// costs less. False when the search stopped at its limit: a cheaper set, or one that meets more, may exist.</summary>
    public required bool IsProvenCheapest { get; init; }

    /// <summary>Gets whether the search stopped at its limit before it found any set: then nothing is known of what to buy, and
    /// no line says "nothing".</summary>
    public bool IsUndecided { get; init; }

    /// <summary>Gets the money by which an unproven plan could at most be undercut; zero when proven.</summary>
    public required decimal ProvenGap { get; init; }

    /// <summary>Gets what one more pound of each nutrient named in the need would cost if everything could be weighed; empty when
    /// nothing fits.</summary>
    public required ImmutableArray<MarginalCost> MarginalCosts { get; init; }

    /// <summary>Gets why no set fits, or null when this one does.</summary>
    public required NutrientConflict? Conflict { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            PurchaseFindings
                .Of(Form, Area, Lines, Balances, Conflict, IsProvenCheapest, IsUndecided, ProvenGap, conditions)
                .Concat(need.Findings)
        );

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. need
                .Sources.Append(Source.Practice)
                .Concat(CountsCompounds ? AtomicMasses.Origin.Sources : [])
                .Distinct()
                .OrderBy(s => s.Id, StringComparer.Ordinal),
        ];

    /// <summary>Whether a nutrient asked for is counted that no label states, by the masses of its compound.</summary>
    internal bool CountsCompounds { get; init; }

    /// <summary>Finds the balance of a nutrient.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>The balance, or null when it was neither asked for nor spread.</returns>
    public NutrientBalance? Balance(PlantNutrient nutrient)
    {
        Guard.Defined(nutrient);
        return Balances.FirstOrDefault(b => b.Nutrient == nutrient);
    }

    /// <summary>Finds the line of a product by its name.</summary>
    /// <param name="productName">Name on the shelf.</param>
    /// <returns>The line, or null when none of it is used.</returns>
    /// <exception cref="InvalidOperationException">Several lines have this name: look in <see cref="Lines"/>.</exception>
    public PurchaseLine? Line(string productName)
    {
        Guard.NotBlank(productName);
        PurchaseLine[] found = [.. Lines.Where(l => l.Product.Name == productName)];
        return found.Length <= 1
            ? found.FirstOrDefault()
            : throw new InvalidOperationException(
                $"{found.Length} lines are called '{productName}': {string.Join("; ", found.Select(l => l.ToString()))}."
            );
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        foreach (var balance in Balances.Where(b => b.AtLeast > ApplicationRate.Zero || b.AtMost is not null))
        {
            string cap = balance.AtMost is { } most ? $", at most {Amounts.Print(most.Over(Area), decimals: 2)}" : "";
            lines.Add(
                FertilizerFormulas
                    .All["nutrient-wanted"]
                    .Line(
                        $"{Amounts.Print(balance.AtLeast.Over(Area), decimals: 2)}{cap}",
                        ("nutrient", PlantNutrients.Symbols[balance.Nutrient]),
                        ("rate", Amounts.Print(balance.AtLeast, decimals: 2)),
                        ("area", Amounts.Print(Area, decimals: 3))
                    )
            );
        }

        foreach (var line in Lines)
        {
            lines.Add(
                FertilizerFormulas
                    .All["price-of-packages"]
                    .Line(
                        $"{Money(line.Cost)}; spread {Amounts.Print(line.Spread, decimals: 2)} "
                            + $"({Amounts.Print(line.Rate, decimals: 2)}), {Amounts.Print(line.Leftover, decimals: 2)} left",
                        ("product", line.Product.ToString()),
                        ("packages", Amounts.Print(line.Packages, 4)),
                        ("price", line.Offer.Price.ToString(CultureInfo.InvariantCulture))
                    )
            );
        }

        lines.AddRange(Lines.SelectMany(GallonLines));
        lines.AddRange(Balances.SelectMany(SpreadLines));
        string proof =
            IsUndecided ? "no set was found before the search stopped"
            : IsProvenCheapest ? "no cheaper set exists"
            : !MeetsEveryNeed && Conflict is null ? "the search stopped before a set met every need"
            : $"at most {Money(ProvenGap)} above the cheapest";
        lines.Add(FertilizerFormulas.All["total-price"].Line($"{Money(TotalCost)} ({proof})"));
        return lines.ToImmutable();
    }

    /// <summary>What a gallon of a liquid holds of each nutrient asked for or spread.</summary>
    private IEnumerable<WorkedLine> GallonLines(PurchaseLine line)
    {
        if (line.Product.LiquidDensity is not { } density)
        {
            yield break;
        }

        double poundsPerGallon = density.PoundsPerUSGallon;
        foreach (var nutrient in Balances.Select(b => b.Nutrient).Where(n => line.Product.Counted.Percent(n) > 0))
        {
            double percent = line.Product.Counted.Percent(nutrient);
            yield return FertilizerFormulas
                .All["liquid-content"]
                .Line(
                    $"{Amounts.Print(FertilizerMath.NutrientIn(poundsPerGallon, percent), 3)} lb/gal",
                    ("symbol", PlantNutrients.Symbols[nutrient]),
                    ("product", line.Product.ToString()),
                    ("pounds a gallon", Amounts.Print(poundsPerGallon, 3)),
                    ("percent", Amounts.Print(percent, 4))
                );
        }
    }

    /// <summary>What is spread of a nutrient; where several products bring it, what each of them does.</summary>
    private IEnumerable<WorkedLine> SpreadLines(NutrientBalance balance)
    {
        PurchaseLine[] bringing = [.. Lines.Where(l => l.Product.Counted.Percent(balance.Nutrient) > 0)];
        foreach (var line in bringing.Length > 1 ? bringing : [])
        {
            double pounds = line.Spread.Pounds;
            double percent = line.Product.Counted.Percent(balance.Nutrient);
            yield return FertilizerFormulas
                .All["nutrient-of-product"]
                .Line(
                    $"{Amounts.Print(FertilizerMath.NutrientIn(pounds, percent), 2)} lb",
                    ("nutrient", PlantNutrients.Symbols[balance.Nutrient]),
                    ("product", line.Product.ToString()),
                    ("weight", Amounts.Print(line.Spread, decimals: 2)),
                    ("percent", Amounts.Print(percent, 4))
                );
        }

        string[] terms =
        [
            .. bringing.Select(l =>
                $"{Amounts.Print(l.Spread, decimals: 2)} x "
                + $"{Amounts.Print(l.Product.Counted.Percent(balance.Nutrient), 4)} %"
            ),
        ];
        yield return FertilizerFormulas
            .All["nutrient-spread"]
            .Line(
                terms.Length > 0
                    ? $"{Amounts.Print(balance.Delivered, decimals: 2)}{Share(balance)}"
                    : "0 lb/ac: none of these products holds any",
                ("nutrient", PlantNutrients.Symbols[balance.Nutrient]),
                ("weight x analysis", terms.Length > 0 ? string.Join(" + ", terms) : "0 lb"),
                ("area", Amounts.Print(Area, decimals: 3))
            );
    }

    private static string Share(NutrientBalance balance) =>
        balance.PercentOfNeed is { } percent ? $", {Amounts.Print(percent, 1)} % of the need" : "";

    private static string Money(decimal amount) =>
        Math.Round(amount, 2, MidpointRounding.AwayFromZero).ToString("#,##0.00", CultureInfo.InvariantCulture);

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
