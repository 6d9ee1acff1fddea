using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Kernels of the exchange capacity.</summary>
internal static class CationMath
{
    /// <summary>Charge of a cation from its concentration.</summary>
    internal static double Charge(double concentration, double concentrationPerMilliequivalent) =>
        Charge<OneLane>(new(concentration), concentrationPerMilliequivalent).Value;

    /// <inheritdoc cref="Charge(double, double)"/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Charge<T>(T concentration, double concentrationPerMilliequivalent)
        where T : unmanaged, ILanes<T> => concentration / T.Of(concentrationPerMilliequivalent);

    internal static double Capacity(double bases, double acidity) => Capacity<OneLane>(new(bases), new(acidity)).Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Capacity<T>(T bases, T acidity)
        where T : unmanaged, ILanes<T> => bases + acidity;

    /// <summary>Part of the exchange capacity that a charge takes.</summary>
    internal static double Saturation(double charge, double capacity) => charge / capacity;

    /// <summary>Acidity from a buffer reading; zero at and above the start.</summary>
    internal static double AcidityMilliequivalents(double bufferPh, double startPh, double milliequivalentsPerPhUnit) =>
        AcidityMilliequivalents<OneLane>(new(bufferPh), startPh, milliequivalentsPerPhUnit).Value;

    /// <inheritdoc cref="AcidityMilliequivalents(double, double, double)"/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T AcidityMilliequivalents<T>(T bufferPh, double startPh, double milliequivalentsPerPhUnit)
        where T : unmanaged, ILanes<T> =>
        T.When(
            bufferPh >= T.Of(startPh),
            T.Of(0),
            T.Of(milliequivalentsPerPhUnit) * (T.Of(startPh) - bufferPh)
        );
}
