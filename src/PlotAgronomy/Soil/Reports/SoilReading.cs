using PlotAgronomy.Soil;

namespace PlotAgronomy;

/// <summary>One number of a soil report with everything it needs to mean something: what, how much, in which unit,
/// as element or oxide, and by which extractant.</summary>
/// <example>
/// <code>
/// var reading = SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 32, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3);
/// Console.WriteLine(reading);
/// // phosphorus 32 ppm (Mehlich-3)
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed partial record SoilReading
{
    private SoilReading(SoilAnalyte analyte, double printedValue, SoilTestUnit unit, Extractant extractant, PrintedForm form)
    {
        Analyte = analyte;
        PrintedValue = printedValue;
        Unit = unit;
        Extractant = extractant;
        Form = form;
    }

    /// <summary>Gets what was measured.</summary>
    public SoilAnalyte Analyte { get; }

    /// <summary>Gets the number as printed, in <see cref="Unit"/> and <see cref="Form"/>.</summary>
    public double PrintedValue { get; }

    /// <summary>Gets the unit as printed.</summary>
    public SoilTestUnit Unit { get; }

    /// <summary>Gets the extractant.</summary>
    public Extractant Extractant { get; }

    /// <summary>Gets whether the number stands for the element or its oxide.</summary>
    public PrintedForm Form { get; }

    /// <summary>Gets whether the report prints "less than" this number: the true value lies between it and 0.</summary>
    public bool IsUpperLimit { get; init; }

    /// <summary>Creates a reading as the report prints it.</summary>
    /// <param name="analyte">What was measured.</param>
    /// <param name="printedValue">Number as printed; finite, at least 0.</param>
    /// <param name="unit">Unit as printed.</param>
    /// <param name="extractant">Extractant; <see cref="Extractant.NotStated"/> when the report is silent.</param>
    /// <param name="form">Element or oxide; an oxide exists for P, K, Ca and Mg only.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite value, or an undefined choice.</exception>
    /// <exception cref="ArgumentException">An oxide of a nutrient that is not reported as one, or a unit in which nobody measures
    /// it.</exception>
    public static SoilReading FromPrinted(
        SoilAnalyte analyte,
        double printedValue,
        SoilTestUnit unit,
        Extractant extractant,
        PrintedForm form = PrintedForm.Element
    )
    {
        Guard.Defined(analyte);
        Guard.Defined(unit);
        Guard.Defined(extractant);
        Guard.Defined(form);
        Guard.AtLeast(printedValue, 0, $"({SoilWords.For(unit)})");
        if (
            form == PrintedForm.Oxide
            && analyte is not (SoilAnalyte.Phosphorus or SoilAnalyte.Potassium or SoilAnalyte.Calcium or SoilAnalyte.Magnesium)
        )
        {
            throw new ArgumentException($"{SoilWords.Opening(analyte)} is not reported as an oxide.", nameof(form));
        }

        if (ReadingUnits.Misfit(analyte, unit) is { } misfit)
        {
            throw new ArgumentException(misfit, nameof(unit));
        }

        return new SoilReading(analyte, printedValue, unit, extractant, form);
    }

    /// <summary>The same number, had it been read in another solution. Where phosphorus is drawn out with Bray's or Olsen's,
    /// potassium is by ammonium acetate.</summary>
    internal SoilReading MadeWith(Extractant extractant) =>
        new(
            Analyte,
            PrintedValue,
            Unit,
            Analyte != SoilAnalyte.Phosphorus && extractant is (Extractant.BrayP1 or Extractant.Olsen)
                ? Extractant.AmmoniumAcetate
                : extractant,
            Form
        )
        {
            IsUpperLimit = IsUpperLimit,
        };

    /// <summary>The value as it is printed, with the name of its scale.</summary>
    internal string Printed => (IsUpperLimit ? "less than " : "") + SoilWords.Printed(PrintedValue, Unit);

    /// <summary>The extractant within a sentence.</summary>
    internal string ExtractedBy => SoilWords.For(Extractant);

    /// <summary>Invariant text such as <c>phosphorus 30 ppm (Mehlich-3)</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string form = Form == PrintedForm.Oxide ? " as oxide" : "";
        return $"{SoilWords.For(Analyte)}{form} {Printed} ({ExtractedBy})";
    }
}
