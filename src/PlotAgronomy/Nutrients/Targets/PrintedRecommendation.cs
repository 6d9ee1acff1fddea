using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The laboratory's own recommendation, with its labels. It is used first; ours stands beside it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PrintedRecommendation
{
    private PrintedRecommendation(string laboratory, string crop, ImmutableArray<PrintedRate> rates)
    {
        Laboratory = laboratory;
        Crop = crop;
        Rates = rates;
    }

    /// <summary>Gets the institution that printed it.</summary>
    public string Laboratory { get; }

    /// <summary>Gets the crop it was printed for.</summary>
    public string Crop { get; }

    /// <summary>Gets the rates.</summary>
    public ImmutableArray<PrintedRate> Rates { get; }

    /// <summary>Enters a printed recommendation.</summary>
    /// <param name="laboratory">Institution that printed it.</param>
    /// <param name="crop">Crop it was printed for.</param>
    /// <param name="rates">Rates; at least one, no nutrient twice.</param>
    /// <returns>The recommendation.</returns>
    /// <exception cref="ArgumentException">A blank label, no rate, or two rates for one nutrient.</exception>
    public static PrintedRecommendation FromRates(string laboratory, string crop, params IReadOnlyList<PrintedRate> rates)
    {
        Guard.NotBlank(laboratory);
        Guard.NotBlank(crop);
        Guard.NotEmpty(rates);
        return rates.GroupBy(r => r.Nutrient).FirstOrDefault(g => g.Count() > 1) is { } twice
            ? throw new ArgumentException($"Two rates for {SoilWords.For(twice.Key)}.", nameof(rates))
            : new PrintedRecommendation(laboratory, crop, [.. rates]);
    }

    /// <summary>Finds the printed rate of a nutrient.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>The rate, or null when the laboratory printed none.</returns>
    public PrintedRate? Find(PlantNutrient nutrient)
    {
        Guard.Defined(nutrient);
        return Rates.FirstOrDefault(r => r.Nutrient == nutrient);
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Laboratory}, {Crop}";
}
