using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Reference;

namespace PlotAgronomy;

/// <summary>Guaranteed analysis as printed on the package: percent by weight of N, available phosphate (P2O5),
/// soluble potash (K2O), and the other nutrients as elements.</summary>
/// <remarks>Phosphorus and potassium stated as elements are an <see cref="ElementalAnalysis"/>.</remarks>
/// <example>
/// <code>
/// var triple = FertilizerAnalysis.FromGrade("19-19-19");
/// Console.WriteLine(triple.Percent(PlantNutrient.Potash));
/// // 19
/// Console.WriteLine(FertilizerAnalysis.FromGrade("21-0-0").With(PlantNutrient.Sulfur, 24));
/// // 21-0-0-24S
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed partial class FertilizerAnalysis
{
    private static readonly Table<FertilizerAnalysis> Grades = new("Fertilizers/Data/grades.csv", r => FromGrade(r.Text("id")));

    private static readonly PlantNutrient[] Nutrients = Enum.GetValues<PlantNutrient>();
    private static readonly Lazy<double[]> Ceilings = new(() =>
        [
            .. Nutrients.Select(n =>
                n is PlantNutrient.Copper or PlantNutrient.Iron
                    ? 100
                    : CompoundCeilings.Percent(n, CompoundCeilings.RichestForm(n))
            ),
        ]
    );

    private readonly double[] percents;

    private FertilizerAnalysis(double[] percents) => this.percents = percents;

    /// <summary>Gets the nutrients it holds, in the order of <see cref="PlantNutrient"/>.</summary>
    public ImmutableArray<PlantNutrient> Holds => [.. Nutrients.Where(n => percents[(int)n] > 0)];

    /// <summary>Gets the grades commonly bagged (common practice), in the order of the table.</summary>
    public static ImmutableArray<FertilizerAnalysis> BaggedGrades => Grades.Rows;

    /// <summary>Creates an analysis from the three numbers of the grade.</summary>
    /// <param name="nitrogenPercent">N in percent; from 0 to 82.2 (ammonia).</param>
    /// <param name="phosphatePercent">Available P2O5 in percent; from 0 to 100.</param>
    /// <param name="potashPercent">Soluble K2O in percent; from 0 to 100.</param>
    /// <returns>The analysis.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range, or together above 100 %.</exception>
    public static FertilizerAnalysis FromPercent(double nitrogenPercent, double phosphatePercent, double potashPercent)
    {
        Guard.Between(nitrogenPercent, 0, 100, "%");
        Guard.Between(phosphatePercent, 0, 100, "%");
        Guard.Between(potashPercent, 0, 100, "%");
        var percents = new double[Nutrients.Length];
        (percents[(int)PlantNutrient.Nitrogen], percents[(int)PlantNutrient.Phosphate], percents[(int)PlantNutrient.Potash]) = (
            nitrogenPercent,
            phosphatePercent,
            potashPercent
        );
        return Checked(percents);
    }

    /// <summary>Reads a grade such as <c>13-13-13</c> or <c>0-0-22-11Mg-22S</c>.</summary>
    /// <param name="text">Text of a person or a tag.</param>
    /// <param name="analysis">The analysis; null when the text cannot be read.</param>
    /// <param name="problem">What was expected; empty when the text was read.</param>
    /// <returns>True when the text was read.</returns>
    public static bool TryRead(string? text, out FertilizerAnalysis? analysis, out string problem)
    {
        analysis = null;
        string[] parts = (text ?? "").Trim().TrimEnd('%').Split('-');
        problem = $"expected a grade such as '13-13-13' or '0-0-22-11Mg-22S', found '{text}'";
        if (parts.Length < 3)
        {
            return false;
        }

        var percents = new double[Nutrients.Length];
        var seen = new HashSet<PlantNutrient>();
        for (int i = 0; i < parts.Length; i++)
        {
            string part = parts[i].Trim();
            string number = string.Concat(part.TakeWhile(c => char.IsAsciiDigit(c) || c == '.'));
            string symbol = part[number.Length..].Trim();
            PlantNutrient? nutrient = i < 3 && symbol.Length == 0 ? Nutrients[i] : PlantNutrients.WithSymbol(symbol);
            if (
                nutrient is null
                || !seen.Add(nutrient.Value)
                || !double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double percent)
            )
            {
                return false;
            }

            percents[(int)nutrient] = percent;
        }

        if (Impossible(percents) is { } fault)
        {
            problem = $"'{text}' is impossible: {Guard.Said(fault)}";
            return false;
        }

        analysis = new FertilizerAnalysis(percents);
        problem = "";
        return true;
    }

    /// <summary>Reads a grade such as <c>13-13-13</c>.</summary>
    /// <param name="grade">Grade; at least three numbers joined by hyphens.</param>
    /// <returns>The analysis.</returns>
    /// <exception cref="ArgumentException">The text is not a grade, or the grade is impossible.</exception>
    public static FertilizerAnalysis FromGrade(string grade) =>
        TryRead(grade, out var analysis, out string problem) ? analysis! : throw new ArgumentException(problem, nameof(grade));

    /// <summary>The same analysis with one nutrient changed or added.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <param name="percent">Percent by weight in the label's form; at least 0.</param>
    /// <returns>The new analysis.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Impossible percent, or together above 100 %.</exception>
    public FertilizerAnalysis With(PlantNutrient nutrient, double percent)
    {
        Guard.Defined(nutrient);
        Guard.Between(percent, 0, 100, "%");
        double[] changed = [.. percents];
        changed[(int)nutrient] = percent;
        return Checked(changed);
    }

    /// <summary>Percent by weight of a nutrient, in the label's form.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>Percent, from 0 to 100.</returns>
    public double Percent(PlantNutrient nutrient) => percents[(int)Guard.Defined(nutrient)];

    /// <summary>Says whether this analysis can be that of a compound.</summary>
    /// <param name="substance">What the product is made of.</param>
    /// <exception cref="ArgumentOutOfRangeException">A nutrient exceeds what the pure compound holds; the message names the
    /// limit.</exception>
    public void RequirePossibleFor(FertilizerSubstance substance)
    {
        if (CompoundCeilings.PureCompound(Guard.Defined(substance)) is not { } pure)
        {
            return;
        }

        foreach (var nutrient in Holds)
        {
            double limit = CompoundCeilings.PercentOrZero(nutrient, pure);
            if (limit > 0 && Percent(nutrient) > limit)
            {
                string compound = FertilizerWords.Substances[substance];
                throw new ArgumentOutOfRangeException(
                    nameof(substance),
                    Percent(nutrient),
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{nutrient} must be at most {limit:0.0#} %: no {compound} holds more, even pure."
                    )
                );
            }
        }
    }

    /// <summary>The analysis as a tag prints it.</summary>
    /// <returns>Text such as <c>21-0-0-24S</c>.</returns>
    public override string ToString() =>
        string.Join(
            '-',
            Nutrients
                .Where(n => (int)n < 3 || percents[(int)n] > 0)
                .Select(n =>
                    percents[(int)n].ToString("0.####", CultureInfo.InvariantCulture)
                    + ((int)n < 3 ? "" : PlantNutrients.Symbols[n])
                )
        );

    internal static bool AreAlike(FertilizerAnalysis one, FertilizerAnalysis other) =>
        one.percents.AsSpan().SequenceEqual(other.percents);

    internal static FertilizerAnalysis Checked(double[] percents) =>
        Impossible(percents) is { } fault ? throw fault : new FertilizerAnalysis(percents);

    private static ArgumentOutOfRangeException? Impossible(double[] percents)
    {
        foreach (var nutrient in Nutrients)
        {
            double percent = percents[(int)nutrient];
            double limit = Ceilings.Value[(int)nutrient];
            if (percent > limit)
            {
                return Fault(nutrient.ToString(), percent, $"{nutrient} must be at most {limit:0.0#} %: no material holds more.");
            }
        }

        double grade = percents[0] + percents[1] + percents[2];
        if (grade > 100)
        {
            return Fault("grade", grade, $"N, P2O5 and K2O together must be at most 100 %, found {grade:0.##} %.");
        }

        // Oxides overstate what is there: the elements themselves must fit into the package.
        double elements =
            percents.Sum()
            - percents[1]
            - percents[2]
            + (percents[1] * ChemicalConversion.ExactFactor(ChemicalForm.Phosphate, ChemicalForm.Phosphorus))
            + (percents[2] * ChemicalConversion.ExactFactor(ChemicalForm.Potash, ChemicalForm.Potassium));
        return Tolerance.IsAbove(elements, 100)
            ? Fault("analysis", elements, $"All nutrients together, as elements, must be at most 100 %, found {elements:0.##} %.")
            : null;
    }

    private static ArgumentOutOfRangeException Fault(string name, double value, FormattableString message) =>
        new(name, value, message.ToString(CultureInfo.InvariantCulture));
}
