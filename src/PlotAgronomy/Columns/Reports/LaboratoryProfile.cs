using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Columns;

/// <summary>What the numbers of an institution's laboratory mean: its buffer, extractants and units, joined with its lime method
/// and recommendation system.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LaboratoryProfile
{
    private LaboratoryProfile(Institution institution, LimeMethod? limeMethod, RecommendationSystem? system) =>
        (Institution, LimeMethod, System) = (institution, limeMethod, system);

    /// <summary>Gets the institution.</summary>
    public Institution Institution { get; }

    /// <summary>Gets the lime method; null where it has none of its own.</summary>
    public LimeMethod? LimeMethod { get; }

    /// <summary>Gets the recommendation system; null where it has none of its own.</summary>
    public RecommendationSystem? System { get; }

    /// <summary>The profile of an institution.</summary>
    /// <param name="institution">Institution.</param>
    /// <param name="limeMethod">Lime method, where the institution has several; null takes its only one.</param>
    /// <param name="system">Recommendation system, where the institution has several; null takes its only one.</param>
    /// <returns>The profile.</returns>
    /// <exception cref="ArgumentException">The institution has several methods or systems, and none of them is named.</exception>
    public static LaboratoryProfile For(
        Institution institution,
        LimeMethod? limeMethod = null,
        RecommendationSystem? system = null
    )
    {
        ArgumentNullException.ThrowIfNull(institution);
        return new(
            institution,
            limeMethod ?? OnlyOne(institution, institution.LimeMethods, nameof(limeMethod)),
            system ?? OnlyOne(institution, institution.NutrientSystems, nameof(system))
        );
    }

    /// <summary>The buffer pH of the lime method.</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="InvalidOperationException">The laboratory's lime method reads no buffer, or several: state the column
    /// itself.</exception>
    public ReportColumn BufferPh(string header) =>
        LimeMethod?.Buffers is [var only]
            ? ReportColumn.BufferPh(header, only)
            : throw new InvalidOperationException($"{Institution} reads no buffer, or several: state what '{header}' holds.");

    /// <summary>Phosphorus as the recommendation system takes it.</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="InvalidOperationException">The system takes none, or several tests: state the column itself.</exception>
    public ReportColumn Phosphorus(string header) => Reading(header, PlantNutrient.Phosphate);

    /// <summary>Potassium as the recommendation system takes it.</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="InvalidOperationException">The system takes none, or several tests: state the column itself.</exception>
    public ReportColumn Potassium(string header) => Reading(header, PlantNutrient.Potash);

    /// <summary>What is asked of a table of this laboratory.</summary>
    /// <param name="targetPh">pH aimed at; from 4 to 9.</param>
    /// <param name="crop">Crop of reports that name none.</param>
    /// <returns>The request.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A target outside its range, or an unknown crop.</exception>
    public ReportRequest Ask(double targetPh, CropRow? crop = null) =>
        new()
        {
            LimeMethod = LimeMethod,
            TargetPh = targetPh,
            System = System,
            Crop = crop,
        };

    /// <summary>The institution and what it answers by.</summary>
    /// <returns>Text such as <c>North Carolina: North Carolina, Mehlich buffer; North Carolina (2023)</c>.</returns>
    public override string ToString() => $"{Institution}: {LimeMethod?.Name ?? "no lime"}; {System?.ToString() ?? "no needs"}";

    private ReportColumn Reading(string header, PlantNutrient nutrient)
    {
        var tests = System
            ?.Accepts.Where(t => t.Nutrient == nutrient)
            .SelectMany(t => t.Extractants.Select(e => (t.Analyte, t.Unit, Extractant: e)))
            .Distinct()
            .ToList();
        return tests is [var only]
            ? ReportColumn.Reading(header, only.Analyte, only.Unit, only.Extractant)
            : throw new InvalidOperationException(
                $"{Institution} takes no {SoilWords.For(nutrient)} test, or several: state what '{header}' holds."
            );
    }

    private static T? OnlyOne<T>(Institution institution, ImmutableArray<T> own, string name)
        where T : class =>
        own.Length <= 1
            ? own.FirstOrDefault()
            : throw new ArgumentException($"{institution} has {string.Join(", ", own)}: name one.", name);
}
