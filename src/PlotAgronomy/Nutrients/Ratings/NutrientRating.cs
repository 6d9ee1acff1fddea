using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Where a reading stands on a system's scale, with every class and its limits in sight.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class NutrientRating
{
    internal NutrientRating() { }

    /// <summary>Gets the rating system; null where a recommendation system works out the limits and prints no scale.</summary>
    public required RatingSystem? System { get; init; }

    /// <summary>Gets the scale.</summary>
    public required RatingScale Scale { get; init; }

    /// <summary>Gets the class.</summary>
    public required RatingClass Class { get; init; }

    /// <summary>Gets the reading as the report prints it.</summary>
    public required SoilReading Reading { get; init; }

    /// <summary>Gets the number that was held against the limits, a pure number in the scale's unit.</summary>
    public required double ComparedValue { get; init; }

    /// <summary>Gets the name of the class as printed.</summary>
    public string Name => Class.Name;

    /// <summary>Gets what the class says in words that compare across systems.</summary>
    public RatingStanding Standing => Class.Standing;

    /// <summary>Gets whether the class would change with the true value: the report prints only "less than", and poorer classes
    /// lie below. In the poorest class it does not matter.</summary>
    public bool HangsOnTrueValue => Reading.IsUpperLimit && Class.Order > 1;

    /// <summary>Gets how well the limits on either side of the class are known.</summary>
    public DataStatus Status => Scale.StatusOf(Class);

    /// <summary>Gets the sources of the limits.</summary>
    public ImmutableArray<Source> Sources => Scale.Sources;

    /// <summary>The rating in one line.</summary>
    /// <returns>Text such as <c>phosphorus 38 ppm: medium (above 25, up to 50 ppm)</c>.</returns>
    public override string ToString() =>
        $"{SoilWords.For(Scale.Analyte)} {SoilWords.Amount(ComparedValue, Scale.Unit)}: {Verdict}";

    internal WorkedLine Line =>
        NutrientFormulas
            .All["soil-rating"]
            .Line(
                $"{SoilWords.Amount(ComparedValue, Scale.Unit)} is {Name} by the limits of {Scale.Scope}: "
                    + string.Join("; ", Scale.Classes),
                ("analyte", SoilWords.For(Scale.Analyte))
            )
            .From(Class.Origin.KnownAs(Status));

    /// <summary>The class with its limits, such as <c>medium (above 25, up to 50 ppm)</c>.</summary>
    internal string Verdict
    {
        get
        {
            string unit = Scale.Unit is { } printed && !SoilWords.IsIndex(printed) ? $" {Scale.UnitInWords}" : "";
            string orLess = HangsOnTrueValue ? " or poorer, for the report prints only less than" : "";
            return $"{Class.Name}{orLess} ({Class.LimitsInWords()}{unit})";
        }
    }
}
