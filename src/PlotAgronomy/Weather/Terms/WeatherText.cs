using System.Text;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>Takes a document in: as text or as a stream, no longer than a person's own.</summary>
internal static class WeatherText
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private static int Longest => (int)WeatherConstants.All["longest-document"];

    internal static string Checked(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        Guard.NotBlank(fileName);
        return text.Length <= Longest ? text : throw TooLong(fileName);
    }

    /// <summary>Reads no more of a stream than a document may be long.</summary>
    internal static string Read(Stream stream, string fileName)
    {
        ArgumentNullException.ThrowIfNull(stream);
        Guard.NotBlank(fileName);
        using var held = new MemoryStream();
        byte[] buffer = new byte[64 * 1024];
        for (int read; (read = stream.Read(buffer, 0, buffer.Length)) > 0;)
        {
            if (held.Length + read > Longest)
            {
                throw TooLong(fileName);
            }

            held.Write(buffer, 0, read);
        }

        try
        {
            return Strict.GetString(held.GetBuffer(), 0, (int)held.Length);
        }
        catch (DecoderFallbackException)
        {
            throw new DataFormatException(fileName, 1, null, "not a text in UTF-8");
        }
    }

    private static DataFormatException TooLong(string fileName) =>
        new(fileName, 1, null, FormattableString.Invariant($"longer than {Longest} characters"));
}
