using System.Globalization;

namespace PlotAgronomy.Tests.Support;

/// <summary>Runs a test under another culture and restores the old one.</summary>
internal sealed class CultureScope : IDisposable
{
    private readonly CultureInfo before = CultureInfo.CurrentCulture;

    internal CultureScope(string name) => CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);

    /// <summary>Cultures whose decimal comma or dotted i breaks careless code.</summary>
    public static TheoryData<string> Treacherous => ["de-DE", "tr-TR"];

    public void Dispose() => CultureInfo.CurrentCulture = before;
}
