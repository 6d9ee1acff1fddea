using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>A published factor from one extractant to another. It is used only when named, and always leaves a finding.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class ExtractantConversion
{
    private static readonly Table<ExtractantConversion> Table = new(
        "Soil/Data/extractant-conversions.csv",
        row => new ExtractantConversion(row)
    );

    private static readonly Catalog<ExtractantConversion> Catalog = new(
        "extractant conversion",
        () => Table.Rows,
        c => c.Id,
        c => c.Status
    );

    private readonly ExtractantConversion? printed;

    private ExtractantConversion(ExtractantConversion printed)
    {
        this.printed = printed;
        Id = $"{printed.Id}-backwards";
        Title = $"{printed.Title}, taken backwards";
        Analyte = printed.Analyte;
        From = printed.To;
        To = printed.From;
        Factor = 1 / printed.Factor;
        Trust = $"no publication prints this direction; forward: {printed.Trust}";
        Origin = printed.Origin;
    }

    private ExtractantConversion(CsvRow row)
    {
        Id = row.Text("id");
        Title = row.Text("title");
        Analyte = row.Choice<SoilAnalyte>("analyte");
        From = row.Choice<Extractant>("from_extractant");
        To = row.Choice<Extractant>("to_extractant");
        Factor = row.Number("factor");
        Trust = row.Text("trust");
        Origin = row.Origin();
    }

    /// <summary>Gets the published conversions that were seen in print, or are practice.</summary>
    public static ImmutableArray<ExtractantConversion> All => Catalog.All;

    /// <summary>Gets the conversions whose factor is from memory.</summary>
    public static ImmutableArray<ExtractantConversion> Unchecked => Catalog.Unchecked;

    /// <summary>Gets Bray P-1 to Mehlich-3 phosphorus, Ohio and Indiana.</summary>
    public static ExtractantConversion TriStateBrayToMehlich3 => Find("tri-state-bray-to-mehlich3");

    /// <summary>Gets ammonium acetate to Mehlich-3 potassium, Ohio and Indiana.</summary>
    public static ExtractantConversion TriStateAcetateToMehlich3 => Find("tri-state-acetate-to-mehlich3");

    /// <summary>Gets the id to ask for.</summary>
    public string Id { get; }

    /// <summary>Gets the conversion in words.</summary>
    public string Title { get; }

    /// <summary>Gets the nutrient.</summary>
    public SoilAnalyte Analyte { get; }

    /// <summary>Gets the extractant of the reading.</summary>
    public Extractant From { get; }

    /// <summary>Gets the extractant of the answer.</summary>
    public Extractant To { get; }

    /// <summary>Gets the factor, a pure number.</summary>
    public double Factor { get; }

    /// <summary>Gets the same factor the other way round: there and back is the reading again. Where a publication prints the
    /// other way itself, <see cref="Between"/> lists it, and the two need not agree.</summary>
    public ExtractantConversion Backwards => printed ?? new(this);

    /// <summary>Gets where it holds, in words.</summary>
    public string Trust { get; }

    /// <summary>Gets how well the factor is known.</summary>
    public DataStatus Status => Origin.Status;

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Finds a conversion by its id.</summary>
    /// <param name="id">Id such as <c>tri-state-bray-to-mehlich3</c>.</param>
    /// <returns>The conversion.</returns>
    /// <exception cref="KeyNotFoundException">No conversion has this id; the message lists all.</exception>
    public static ExtractantConversion Find(string id) => Catalog.Find(id);

    /// <summary>Finds a conversion by its id.</summary>
    /// <param name="id">Id such as <c>tri-state-bray-to-mehlich3</c>; may be null.</param>
    /// <param name="conversion">The conversion, or null.</param>
    /// <param name="problem">Why there is none, with a list of all ids; empty when there is one.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out ExtractantConversion? conversion, out string problem) =>
        Catalog.TryFind(id, out conversion, out problem);

    /// <summary>Lists the published conversions between two extractants; empty when there is none.</summary>
    /// <param name="analyte">Nutrient.</param>
    /// <param name="from">Extractant of the reading.</param>
    /// <param name="to">Extractant wanted.</param>
    /// <returns>The conversions.</returns>
    public static ImmutableArray<ExtractantConversion> Between(SoilAnalyte analyte, Extractant from, Extractant to) =>
        [.. Catalog.Everything.Where(c => c.Analyte == analyte && c.From == from && c.To == to)];

    /// <summary>Says why there is no conversion between two extractants, in either direction,
    /// when research has shown that there is none.</summary>
    /// <param name="analyte">Nutrient.</param>
    /// <param name="from">Extractant of the reading.</param>
    /// <param name="to">Extractant wanted.</param>
    /// <returns>The finding, or null when nothing is known against it.</returns>
    public static Finding? ReasonAgainst(SoilAnalyte analyte, Extractant from, Extractant to) =>
        ExtractantRefusal.All.FirstOrDefault(r => r.Covers(analyte, from, to)) is { } refusal
            ? FindingCatalog.Create(
                SoilCodes.ExtractantNoEquation,
                ("analyte", SoilWords.Opening(analyte)),
                ("from", SoilWords.For(from)),
                ("to", SoilWords.For(to)),
                ("reason", refusal.Reason)
            )
            : null;

    /// <summary>Converts a reading, keeping the original beside it.</summary>
    /// <param name="reading">Reading by <see cref="From"/>, in a unit of concentration
    /// or of mass per area (not an index).</param>
    /// <returns>The reading by <see cref="To"/>, with the finding.</returns>
    /// <exception cref="ArgumentException">Another nutrient or extractant, or an index.</exception>
    public ReadingConversion Convert(SoilReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        if (reading.Analyte != Analyte || reading.Extractant != From)
        {
            throw new ArgumentException(
                $"'{Id}' takes {SoilWords.For(Analyte)} by {SoilWords.For(From)}, not {reading}.",
                nameof(reading)
            );
        }

        if (SoilWords.IsIndex(reading.Unit) || reading.Unit == SoilTestUnit.PercentSaturation)
        {
            throw new ArgumentException(
                $"'{Id}' takes a concentration or lb/ac, not {SoilWords.For(reading.Unit)}: convert the unit first.",
                nameof(reading)
            );
        }

        double value = SoilUnitMath.ByOtherExtractant(reading.PrintedValue, Factor);
        var converted = SoilReading.FromPrinted(Analyte, value, reading.Unit, To, reading.Form);
        var step = new ConversionStep(
            SoilFormulas.All["other-extractant"],
            "reading",
            reading.PrintedValue,
            value,
            [FormulaPlace.InWords("conversion", Title), new("factor", Factor, 3)],
            Origin
        );
        return new ReadingConversion(reading, converted, [step], () => [Converted()]);
    }

    /// <summary>Text such as <c>Bray P-1 to Mehlich-3, Ohio and Indiana</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Title;

    private Finding Converted() =>
        FindingCatalog.Create(
            SoilCodes.ExtractantConverted,
            ("analyte", SoilWords.Opening(Analyte)),
            ("from", SoilWords.For(From)),
            ("to", SoilWords.For(To)),
            ("method", Title),
            ("trust", Trust)
        );
}
