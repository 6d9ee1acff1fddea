using System.Text;

namespace PlotAgronomy.Sample;

/// <summary>Writes text, and a question mark for every control character but line ends and tabs: a name in a file must not
/// command the terminal it is shown on.</summary>
internal sealed class PlainWriter(TextWriter inner, Action beforeUse) : TextWriter(inner.FormatProvider)
{
    private const char InPlaceOfControl = '?';

    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value)
    {
        beforeUse();
        inner.Write(Plain(value));
    }

    /// <inheritdoc/>
    public override void Write(string? value)
    {
        beforeUse();
        inner.Write(value is null ? null : string.Concat(value.Select(Plain)));
    }

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<char> buffer) => Write(new string(buffer));

    /// <inheritdoc/>
    public override void WriteLine(string? value) => Write(value + inner.NewLine);

    /// <inheritdoc/>
    public override void Flush() => inner.Flush();

    private static char Plain(char value) =>
        char.IsControl(value) && value is not ('\n' or '\r' or '\t') ? InPlaceOfControl : value;
}
