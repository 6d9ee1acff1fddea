using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Whether a soil's pH and a reading in one buffer can belong together, as a check of doubles. A pH that is not known
/// is NaN and contradicts nothing.</summary>
internal readonly struct PhPairRule
{
    private readonly double margin;
    private readonly double limeNotExpected;
    private readonly double acidWithoutReserve;
    private readonly double start;
    private readonly double startEdge;
    private readonly double acidDrop;
    private readonly double noAcidityFrom;

    /// <param name="start">pH of the buffer before soil is added; infinite where that was not seen in a publication.</param>
    /// <param name="termsEndBelowStart">How far below its start the acidity terms of the buffer end.</param>
    private PhPairRule(double start, double termsEndBelowStart)
    {
        this.start = start;
        startEdge = Tolerance.HighEdge(start);
        noAcidityFrom = Tolerance.LowEdge(start - termsEndBelowStart);
        margin = Tolerance.LowEdge(SoilConstants.All["swapped-ph-margin"]);
        limeNotExpected = SoilConstants.All["lime-not-expected-ph"];
        acidDrop = Tolerance.LowEdge(SoilConstants.All["acid-buffer-drop"]);
        acidWithoutReserve = SoilConstants.All["acid-without-reserve-ph"];
    }

    internal static PhPairRule ForUnknownBuffer => new(double.PositiveInfinity, 0);

    /// <summary>SMP and Sikora end half a unit below their start: their acidity terms are zero from pH 7.0 on.</summary>
    internal static PhPairRule For(SoilBuffer buffer) =>
        new(
            BufferStart.Of(buffer) ?? double.PositiveInfinity,
            BufferStart.IsAboveTheTerms(buffer) ? SoilConstants.All["buffer-placeholder-margin"] : 0
        );

    internal bool LooksSwapped(double soil, double reading) =>
        LooksSwapped(OneLane.Of(soil), OneLane.Of(reading)).Bits != 0;

    internal bool Contradicts(double soil, double reading) =>
        Contradicts(OneLane.Of(soil), OneLane.Of(reading)).Bits != 0;

    /// <summary>The soil's pH lies clearly above the buffer's: it could be the buffer's reading, or the buffer finds acidity in a
    /// soil that can hold next to none.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T LooksSwapped<T>(T soil, T reading)
        where T : unmanaged, ILanes<T> =>
        (soil - reading >= T.Of(margin))
        & (reading < T.Of(limeNotExpected))
        & ((soil <= T.Of(startEdge)) | (T.Of(start) - reading >= T.Of(acidDrop)));

    /// <summary>The soil is very acid, yet the buffer finds no acidity.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T Contradicts<T>(T soil, T reading)
        where T : unmanaged, ILanes<T> => (soil <= T.Of(acidWithoutReserve)) & (reading >= T.Of(noAcidityFrom));
}
