using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Columns;

/// <summary>What a column of a table of soil tests holds, stated once: <c>"P_ppm"</c> is phosphorus by Mehlich-3 in
/// ppm.</summary>
/// <remarks>A cell may hold its number with a unit (of a reading another one than stated is taken as it stands there), with a
/// decimal comma, or below a limit (<c>&lt;5</c>). A blank, <c>-</c> or <c>n/a</c> is not stated. What cannot be a value, such as
/// pH 66 or <c>6.O</c>, is a problem with its line and header, and counts as not stated.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class ReportColumn
{
    private readonly Func<string, ReportDraft, string?> read;
    private readonly string meaning;

    private ReportColumn(string header, string meaning, Func<string, ReportDraft, string?> read)
    {
        Header = Guard.NotBlank(header).Trim();
        this.meaning = meaning;
        this.read = read;
    }

    /// <summary>Gets the header, as the file prints it; capitals do not matter.</summary>
    public string Header { get; }

    /// <summary>Whether it names the sample.</summary>
    internal bool IsSample { get; private init; }

    /// <summary>The name or number of the sample.</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    public static ReportColumn Sample(string header) =>
        new(header, "sample", (cell, draft) =>
        {
            draft.Sample = cell;
            return null;
        })
        {
            IsSample = true,
        };

    /// <summary>The crop, in the words of the table.</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    public static ReportColumn Crop(string header) =>
        new(header, "crop", (cell, draft) =>
        {
            draft.Crop = cell;
            return null;
        });

    /// <summary>The pH in water.</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    public static ReportColumn WaterPh(string header) =>
        Ph(header, "water pH", (draft, ph) => draft.WaterPh = PlotAgronomy.WaterPh.FromValue(ph));

    /// <summary>The pH in a salt solution.</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    public static ReportColumn SaltPh(string header) =>
        Ph(header, "salt pH", (draft, ph) => draft.SaltPh = PlotAgronomy.Soil.SaltPh.FromValue(ph));

    /// <summary>A buffer pH.</summary>
    /// <param name="header">Header of the column.</param>
    /// <param name="buffer">Buffer it was read in.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Unknown buffer.</exception>
    public static ReportColumn BufferPh(string header, SoilBuffer buffer)
    {
        Guard.Defined(buffer);
        string meaning = $"buffer pH ({SoilWords.For(buffer)})";
        return Ph(header, meaning, (draft, ph) => draft.Add(PlotAgronomy.BufferPh.FromValue(ph, buffer)));
    }

    /// <summary>A reading of a nutrient.</summary>
    /// <param name="header">Header of the column.</param>
    /// <param name="analyte">What was measured.</param>
    /// <param name="unit">Unit of its numbers.</param>
    /// <param name="extractant">Extractant.</param>
    /// <param name="form">Element or oxide.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">A blank header, or a unit or form in which nobody measures it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An unknown choice.</exception>
    public static ReportColumn Reading(
        string header,
        SoilAnalyte analyte,
        SoilTestUnit unit,
        Extractant extractant,
        PrintedForm form = PrintedForm.Element
    )
    {
        var example = SoilReading.FromPrinted(analyte, 0, unit, extractant, form);
        string meaning = $"{SoilWords.For(analyte)} in {SoilWords.For(unit)} ({example.ExtractedBy})";
        return Number(header, meaning, (draft, cell) =>
        {
            var stated = unit;
            if (cell.Unit.Length > 0 && !TryFind(SoilWords.Units, cell.Unit, out stated))
            {
                return $"'{cell.Unit}' is no unit of a soil test";
            }

            return Try(() => draft.Add(
                SoilReading.FromPrinted(analyte, cell.Value, stated, extractant, form) with { IsUpperLimit = cell.IsUpperLimit }
            ));
        }, mayBeBelow: true);
    }

    /// <summary>The cation exchange capacity.</summary>
    /// <param name="header">Header of the column.</param>
    /// <param name="basis">By weight or by volume of soil.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Unknown basis.</exception>
    public static ReportColumn ExchangeCapacity(string header, CationChargeBasis basis = CationChargeBasis.Per100Grams) =>
        Charge(header, "exchange capacity", basis, (draft, charge) =>
            draft.ExchangeCapacity = SoilLimits.ExchangeCapacity(charge, nameof(SoilReport.PrintedExchangeCapacity)));

    /// <summary>The exchangeable acidity.</summary>
    /// <param name="header">Header of the column.</param>
    /// <param name="basis">By weight or by volume of soil.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Unknown basis.</exception>
    public static ReportColumn ExchangeableAcidity(string header, CationChargeBasis basis = CationChargeBasis.Per100Grams) =>
        Charge(header, "exchangeable acidity", basis, (draft, charge) => draft.Acidity = charge);

    /// <summary>Organic matter in percent.</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    public static ReportColumn OrganicMatter(string header) =>
        In(header, "organic matter", "%", (draft, percent) => draft.OrganicMatter = Fraction.FromPercent(percent));

    /// <summary>Humic matter in percent (North Carolina).</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    public static ReportColumn HumicMatter(string header) =>
        In(header, "humic matter", "%", (draft, percent) => draft.HumicMatter = Fraction.FromPercent(percent));

    /// <summary>Weight per volume of the scooped soil in g/cm3.</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    public static ReportColumn WeightPerVolume(string header) =>
        In(header, "weight per volume", "g/cm3", (draft, grams) =>
            draft.WeightPerVolume = SoilLimits.WeightPerVolume(
                Density.FromGramsPerCubicCentimeter(grams),
                nameof(SoilReport.WeightPerVolume)
            ));

    /// <summary>Depth of sampling in inches.</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    public static ReportColumn Depth(string header) =>
        In(header, "depth of sampling", "in", (draft, inches) =>
            draft.Depth = SampledLayer.Checked(Length.FromInches(inches), nameof(SoilReport.SampledDepth)));

    /// <summary>Soil class, in words such as <c>mineral</c>.</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    public static ReportColumn SoilClass(string header) =>
        Choice(header, "soil class", SoilWords.Classes, (draft, found) => draft.Class = found);

    /// <summary>Texture, in words such as <c>sandy loam</c>.</summary>
    /// <param name="header">Header of the column.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">Blank.</exception>
    public static ReportColumn Texture(string header) =>
        Choice(header, "texture", SoilWords.Textures, (draft, found) => draft.Texture = found);

    /// <summary>Header and meaning.</summary>
    /// <returns>Text such as <c>'P_ppm': phosphorus in ppm (Mehlich-3)</c>.</returns>
    public override string ToString() => $"'{Header}': {meaning}";

    /// <summary>Takes a cell into a report.</summary>
    /// <returns>What is wrong with it; null for nothing.</returns>
    internal string? Take(string cell, ReportDraft into) => CellNumber.IsMissing(cell) ? null : read(cell, into);

    private static ReportColumn Number(
        string header,
        string meaning,
        Func<ReportDraft, CellNumber, string?> take,
        bool mayBeBelow = false
    ) =>
        new(header, meaning, (cell, draft) =>
            !CellNumber.TryRead(cell, out var number, out string problem) ? problem
            : number.IsUpperLimit && !mayBeBelow ? $"'{cell}': of {meaning} less than a limit is no value"
            : take(draft, number));

    private static ReportColumn Ph(string header, string meaning, Action<ReportDraft, double> take) =>
        Number(header, meaning, (draft, cell) =>
            cell.Unit is not ("" or "pH" or "PH" or "ph") ? $"'{cell.Unit}' is no unit of pH"
            : SoilReport.CheckTypedPh(cell.Value) is [var slip, ..] ? slip.Text
            : Try(() => take(draft, cell.Value)));

    private static ReportColumn In(string header, string meaning, string unit, Action<ReportDraft, double> take) =>
        Number(header, $"{meaning} in {unit}", (draft, cell) =>
            cell.Unit.Length > 0 && !cell.Unit.Equals(unit, StringComparison.OrdinalIgnoreCase)
                ? $"'{cell.Unit}' where {unit} is expected"
                : Try(() => take(draft, cell.Value)));

    private static ReportColumn Charge(
        string header,
        string meaning,
        CationChargeBasis basis,
        Action<ReportDraft, CationCharge> take
    ) =>
        In(header, meaning, SoilWords.For(Guard.Defined(basis)), (draft, charge) => take(draft, CationCharge.Of(charge, basis)));

    private static ReportColumn Choice<T>(string header, string meaning, EnumWords<T> words, Action<ReportDraft, T> take)
        where T : struct, Enum =>
        new(header, meaning, (cell, draft) =>
        {
            if (!TryFind(words, cell, out T found))
            {
                return $"'{cell}' is no {meaning}; expected one of {string.Join(", ", words.All.Select(w => w.Word))}";
            }

            take(draft, found);
            return null;
        });

    private static bool TryFind<T>(EnumWords<T> words, string word, out T value)
        where T : struct, Enum
    {
        for (int i = 0; i < words.Count; i++)
        {
            if (words.WordAt(i).Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                value = words.ValueAt(i);
                return true;
            }
        }

        value = default;
        return false;
    }

    private static string? Try(Action take)
    {
        try
        {
            take();
            return null;
        }
        catch (ArgumentException refused)
        {
            return Guard.Said(refused);
        }
    }
}
