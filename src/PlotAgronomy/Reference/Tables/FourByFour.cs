using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace PlotAgronomy.Reference;

/// <summary>Looks up four places of a table at once, each of which holds four numbers side by side.</summary>
internal static class FourByFour
{
    /// <summary>The first number of each of the four places, the second, the third and the fourth.</summary>
    /// <param name="table">Four numbers a place.</param>
    /// <param name="places">Places inside the table.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (Vector256<double> First, Vector256<double> Second, Vector256<double> Third, Vector256<double> Fourth) Load(
        ReadOnlySpan<double> table,
        Vector256<long> places
    ) => Turned(At(table, places, 0), At(table, places, 1), At(table, places, 2), At(table, places, 3));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> At(ReadOnlySpan<double> table, Vector256<long> places, int which) =>
        Vector256.Create(table.Slice(4 * (int)places.GetElement(which), 4));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector256<double>, Vector256<double>, Vector256<double>, Vector256<double>) Turned(
        Vector256<double> a,
        Vector256<double> b,
        Vector256<double> c,
        Vector256<double> d
    )
    {
        if (!Avx.IsSupported)
        {
            return (Column(0), Column(1), Column(2), Column(3));
        }

        var (evenLow, evenHigh) = (Avx.UnpackLow(a, b), Avx.UnpackLow(c, d));
        var (oddLow, oddHigh) = (Avx.UnpackHigh(a, b), Avx.UnpackHigh(c, d));
        return (
            Vector256.Create(evenLow.GetLower(), evenHigh.GetLower()),
            Vector256.Create(oddLow.GetLower(), oddHigh.GetLower()),
            Vector256.Create(evenLow.GetUpper(), evenHigh.GetUpper()),
            Vector256.Create(oddLow.GetUpper(), oddHigh.GetUpper())
        );

        Vector256<double> Column(int at) =>
            Vector256.Create(a.GetElement(at), b.GetElement(at), c.GetElement(at), d.GetElement(at));
    }
}
