using System.Collections.Immutable;
using PlotAgronomy.Liming;

namespace PlotAgronomy.Columns;

/// <summary>The lime that many soils need by one method to one target: a row of a column is a soil.</summary>
/// <remarks>
/// <para>A row's rate is that of <see cref="LimeMethod.NeedFor"/>, bit for bit: lb/ac of <see cref="LimeMethod.Basis"/>, not
/// rounded, 0 where no lime is due; NaN where the method does not answer. Two things differ. A water pH and a buffer pH that
/// look swapped or contradict each other are warned of there and refused here, where nobody reads a warning; and a value that
/// cannot be refuses its row, not the whole call.</para>
/// <para>A column is made once, does not change, and may be used by several threads at once; a slice of rows gives what the whole
/// gives. Earlier lime and the error of a reading are asked of the method itself.</para>
/// </remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeColumn
{
    private readonly LimeRows rows;
    private readonly LimeRounding? rounding;
    private readonly PlotSoil soil;

    private LimeColumn(LimeMethod method, double targetPh, SoilClass? soilClass, SoilTexture? texture, SoilBuffer? buffer)
    {
        Method = method;
        TargetPh = targetPh;
        Buffer = buffer;
        soil = new SoilReport
        {
            Laboratory = method.Institution.Name,
            SoilClass = soilClass,
            Texture = texture,
        };
        var checks = new LimeRowChecks(method, targetPh, soil.Class, texture, buffer);
        rows = LimeRows.For(method, targetPh, checks, texture);
        rounding = LimeRounding.ForInstitution(method.Institution);
        RowFindings = checks.Findings;
    }

    /// <summary>Gets the method.</summary>
    public LimeMethod Method { get; }

    /// <summary>Gets the pH aimed at.</summary>
    public double TargetPh { get; }

    /// <summary>Gets the buffer that the readings were run in; null for a method that reads no buffer.</summary>
    public SoilBuffer? Buffer { get; }

    /// <summary>Gets a value indicating whether the method reads the water pH alone, so that no other reading is handed
    /// in.</summary>
    public bool ReadsWaterPh => Method.Formula.ReadsWaterPh;

    /// <summary>Gets what the flags of a row mean.</summary>
    public RowFindings RowFindings { get; }

    /// <summary>Gets what holds for every row: numbers from memory, a depth that is not printed, a target above pH 7.</summary>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            LimeMethodChecks.Standing(Method, soil, TargetPh).Concat(Method.Formula.AboutTexture(soil.Texture))
        );

    /// <summary>A column by a method to a target.</summary>
    /// <param name="method">Method, checked or not.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 9. To a target that the method does not offer no row is answered.</param>
    /// <param name="soilClass">Class of all soils; null takes them as mineral. A class that the method is not meant for is not
    /// answered.</param>
    /// <param name="texture">Texture of all soils, which the garden table needs; null where it is not known.</param>
    /// <param name="buffer">Buffer of the readings, one of the method's; null takes the first it names.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A target outside its range, an unknown class, texture or buffer.</exception>
    /// <exception cref="ArgumentException">A buffer that the method is not calibrated for.</exception>
    public static LimeColumn ForMethod(
        LimeMethod method,
        double targetPh,
        SoilClass? soilClass = null,
        SoilTexture? texture = null,
        SoilBuffer? buffer = null
    )
    {
        ArgumentNullException.ThrowIfNull(method);
        LimeLimits.TargetPh(targetPh, nameof(targetPh));
        Guard.Defined(soilClass);
        Guard.Defined(texture);
        if (Guard.Defined(buffer) is { } ran && !method.Buffers.Contains(ran))
        {
            throw new ArgumentException($"Must be a buffer that {method.Name} reads: {method.Reads}.", nameof(buffer));
        }

        SoilBuffer? first = method.Buffers.IsEmpty ? null : method.Buffers[0];
        return new(method, targetPh, soilClass, texture, buffer ?? first);
    }

    /// <summary>The rate of every row.</summary>
    /// <param name="waterPh">Water pH; NaN where it is not known. Methods that read the buffer alone answer without it.</param>
    /// <param name="reading">Reading in the method's terms (<see cref="LimeMethod.Reads"/>): buffer pH, acidity in meq/100 g,
    /// lime buffer capacity in mg/kg per pH at equilibrium, or aluminum in ppm; NaN where it is not known. Empty for a method
    /// that reads the water pH alone (<see cref="ReadsWaterPh"/>).</param>
    /// <param name="rates">Takes the rates in lb/ac of the method's basis.</param>
    /// <param name="status">Takes how far each row was answered.</param>
    /// <param name="flags">Takes why, and what to look at (<see cref="RowFindings"/>).</param>
    /// <exception cref="ArgumentException">Columns of unlike length, or a result that lies over a reading.</exception>
    public void Rates(
        ReadOnlySpan<double> waterPh,
        ReadOnlySpan<double> reading,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        ColumnSpans.SameLength(ReadsWaterPh ? 0 : waterPh.Length, reading.Length, nameof(reading));
        ColumnSpans.Written(waterPh.Length, rates.Length, status.Length, flags.Length, nameof(rates));
        ColumnSpans.Apart(waterPh, rates, nameof(rates));
        ColumnSpans.Apart(reading, rates, nameof(rates));
        rows.Fill(waterPh, ReadsWaterPh ? waterPh : reading, rates, status, flags);
    }

    /// <summary>Rates as the method's institution prints them: to its step, none below its limit; unchanged where it prints no
    /// rounding. That of <see cref="LimeNeed.Published"/>, bit for bit.</summary>
    /// <param name="rates">Rates in lb/ac of the method's basis; NaN stays NaN.</param>
    /// <param name="published">Takes the rounded rates; may be the same memory as the rates.</param>
    /// <exception cref="ArgumentException">Columns of unlike length, or a result that lies over rates of other rows.</exception>
    public void Published(ReadOnlySpan<double> rates, Span<double> published)
    {
        ColumnSpans.SameLength(rates.Length, published.Length, nameof(published));
        if (rates != published)
        {
            ColumnSpans.Apart(rates, published, nameof(published));
        }

        for (int i = 0; i < rates.Length; i++)
        {
            published[i] = rounding is null ? rates[i] : rounding.PoundsPerAcre(rates[i]);
        }
    }

    /// <summary>Method and target.</summary>
    /// <returns>Text such as <c>North Carolina, Mehlich buffer, to pH 6.5</c>.</returns>
    public override string ToString() => $"{Method}, to pH {LimeText.Ph(TargetPh)}";
}
