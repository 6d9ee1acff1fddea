namespace PlotAgronomy.Tests.Support;

/// <summary>Holds a text against an approved file. Run with UPDATE_DOCS=1 to rewrite the file.</summary>
internal static class ApprovedText
{
    internal static void AssertCurrent(string file, string text)
    {
        if (Environment.GetEnvironmentVariable("UPDATE_DOCS") == "1")
        {
            File.WriteAllText(file, text);
        }

        Assert.Equal(File.ReadAllText(file), text);
    }
}
