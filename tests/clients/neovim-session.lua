-- Plays a session in headless Neovim and writes what was seen to a file, as JSON.
-- Reads TAILSHAFT_SESSION: command, folder, spec, line, column, rule, route (a Lua pattern), out.
local session = vim.json.decode(os.getenv('TAILSHAFT_SESSION'))
local seen = {}

local function finish()
  vim.fn.writefile({ vim.json.encode(seen) }, session.out)
  vim.cmd('qall!')
end

local function await(what, wanted)
  if vim.wait(30000, wanted, 20) then return end
  seen.failure = 'waited 30 s for ' .. what
  finish()
end

local function findings()
  return vim.tbl_filter(function(each) return each.code == session.rule end, vim.diagnostic.get(0))
end

local function floating_text()
  for _, window in ipairs(vim.api.nvim_list_wins()) do
    if vim.api.nvim_win_get_config(window).relative ~= '' then
      return table.concat(vim.api.nvim_buf_get_lines(vim.api.nvim_win_get_buf(window), 0, -1, false), '\n')
    end
  end
end

vim.o.swapfile = false
vim.cmd('edit ' .. vim.fn.fnameescape(session.spec))
vim.bo.filetype = 'tailshaft'
vim.lsp.buf_attach_client(0, vim.lsp.start_client({
  name = 'tailshaft',
  cmd = session.command,
  root_dir = session.folder,
}))

await('the finding', function() return #findings() > 0 end)
seen.message = findings()[1].message
seen.line = findings()[1].lnum

vim.api.nvim_win_set_cursor(0, { session.line + 1, session.column })
vim.lsp.buf.hover()
await('the hover', function() return floating_text() ~= nil end)
seen.hover = floating_text()

-- The menu of fixes, answered as a person would after reading the titles.
vim.ui.select = function(items, options, choose)
  seen.titles = vim.tbl_map(options.format_item or tostring, items)
  for index, title in ipairs(seen.titles) do
    if vim.regex(session.route):match_str(title) then return choose(items[index], index) end
  end
  choose(nil, nil)
end
local before = vim.api.nvim_buf_get_changedtick(0)
vim.lsp.buf.code_action()
await('the edit', function() return vim.api.nvim_buf_get_changedtick(0) ~= before end)
seen.text = table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, false), '\n') .. '\n'

await('the finding to go', function() return #findings() == 0 end)
seen.left = #findings()
finish()
