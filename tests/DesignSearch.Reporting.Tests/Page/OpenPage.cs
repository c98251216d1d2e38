using Microsoft.Playwright;

namespace DesignSearch.Reporting.Tests;

/// <summary>A page in the browser with everything it asked for and complained about.</summary>
internal sealed class OpenPage
{
    public OpenPage(IPage page)
    {
        Page = page;
        page.Request += (_, request) => Requests.Add(request.Url);
        page.Console += (_, message) => Complaints.Add(message.Text);
        page.PageError += (_, error) => Complaints.Add(error);
        page.Dialog += (_, dialog) => Complaints.Add("dialog: " + dialog.Message);
    }

    public IPage Page { get; }

    public List<string> Requests { get; } = [];

    public List<string> Complaints { get; } = [];
}
